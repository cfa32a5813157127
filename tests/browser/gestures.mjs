// What a person does on the page, in any browser that webdriver.mjs drives.

import assert from "node:assert/strict";

export async function start(browser, site) {
  await browser.goTo(site.url);
  await browser.until("the program runs", () => document.readyState === "complete" && !document.getElementById("boot"));
}

/** Waits for what follows an edit a frame later: drawing, lists, link and card. */
export async function settled(browser) {
  await browser.run(() => {
    window.settled = false;
    // Printing waits for nothing, not even for a moment without edits.
    dispatchEvent(new Event("beforeprint"));
    const frames = (left) =>
      requestAnimationFrame(() => setTimeout(() => (left > 0 ? frames(left - 1) : (window.settled = true))));
    frames(2);
  });
  await browser.until("the page has settled", () => window.settled);
}

export async function figures(browser) {
  await settled(browser);
  const found = {};
  for (const name of ["fill", "dose", "harvest", "left"]) found[name] = await browser.text(`#figure-${name}`);
  assert.match(found.fill, /^(\d+(\.\d)? cm|[\d ./]+ in) below the rim$/);
  assert.match(found.harvest, /^\d{1,2} [A-Z][a-z]{2} 2027$/);
  assert.match(found.left, /^[\d.]+ (m?L|gal|fl oz)$/);
  return found;
}

export async function newPlan(browser) {
  await browser.click("#plans");
  await pressButton(browser, "New plan");
  await browser.until("the first page", () => document.querySelector(".examples") !== null);
}

export async function goToStep(browser, step) {
  const nth = ["container", "crop", "fertilizer", "climate"].indexOf(step) + 1;
  await browser.run((at) => document.querySelectorAll(".step-button")[at - 1].setAttribute("data-wanted", ""), nth);
  await browser.click("[data-wanted]");
  await browser.run(() => document.querySelector("[data-wanted]")?.removeAttribute("data-wanted"));
  await browser.until(`the step ${step}`, (id) => document.activeElement?.id === id, `step-${nth}`);
}

/** A click on the button with this text. */
export async function pressButton(browser, text) {
  await browser.until(`the button '${text}'`, (wanted) => {
    const button = [...document.querySelectorAll("button")].find((found) => found.textContent.trim() === wanted);
    button?.setAttribute("data-wanted", "");
    return button !== undefined;
  }, text);
  await browser.click("[data-wanted]");
  await browser.run(() => document.querySelector("[data-wanted]")?.removeAttribute("data-wanted"));
}

/** Lists and calendars open outside the page, where no driver reaches; the page hears the same event. */
export function choose(browser, selector, value) {
  return browser.run((at, now) => {
    const control = document.querySelector(at);
    control.value = now;
    control.dispatchEvent(new Event("input", { bubbles: true }));
    control.dispatchEvent(new Event("change", { bubbles: true }));
  }, selector, value);
}

export async function setDate(browser, selector, date) {
  await browser.element(selector);
  await choose(browser, selector, date);
}
