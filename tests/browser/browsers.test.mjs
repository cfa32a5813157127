// The main job in the three engines that people have: Chromium, Firefox (ESR) and WebKit. Each
// makes the same plans and must show the same figures, to the last digit.

import assert from "node:assert/strict";
import test from "node:test";
import { choose, figures, goToStep, newPlan, pressButton, setDate, start } from "./gestures.mjs";
import { startServer } from "./rig.mjs";
import { EXAMPLES, STORE, unfolded } from "./screen.mjs";
import { BROWSERS, KEYS, open } from "./webdriver.mjs";

const shown = {};

for (const kind of Object.keys(BROWSERS)) {
  test(`${kind}: a plan from nothing, every example, the day slider, the card, and kept for next time`, async (t) => {
    const site = await startServer(t);
    const browser = await open(t, kind);
    const seen = {};
    await start(browser, site);
    await browser.run(() => {
      window.stopped = [];
      document.addEventListener("securitypolicyviolation", (event) => window.stopped.push(event.blockedURI));
    });
    // The units follow the browser's language; all must show the same.
    await choose(browser, "#units", "metric");

    await pressButton(browser, "Start from what I have");
    await browser.until("the first step", () => document.activeElement?.id === "step-1");
    await browser.fill("#plan-name", "From nothing");
    await fillIn(browser);
    seen.own = await result(browser);

    for (const [index, key] of EXAMPLES.entries()) {
      await newPlan(browser);
      await browser.run((nth) => document.querySelectorAll("button.example")[nth].scrollIntoView({ block: "center" }), index);
      await browser.click(`.examples li:nth-child(${index + 1}) button`);
      await browser.until("the first step", () => document.activeElement?.id === "step-1");
      // The calendar of an example begins today, and midnight may lie between two browsers.
      await goToStep(browser, "crop");
      await setDate(browser, "#crop-date", "2027-05-12");
      seen[key] = await result(browser);
    }

    const kept = await browser.run((name) => localStorage.getItem(name), STORE);
    assert.equal(JSON.parse(kept).plans.length, 1 + EXAMPLES.length);
    const last = await figures(browser);
    await start(browser, site);
    assert.deepEqual(await figures(browser), last, "after it is opened again");
    assert.equal(await browser.run((name) => localStorage.getItem(name), STORE), kept);

    const requests = await browser.requests();
    assert.ok(requests.some((name) => name.endsWith(".wasm")));
    assert.deepEqual(requests.filter((name) => !name.startsWith(site.url)), [], "requests to elsewhere");
    assert.deepEqual(await browser.run(() => window.stopped ?? []), [], "stopped by the policy");
    shown[kind] = seen;
  });
}

test("the figures are the same in all three, to the last digit", () => {
  const { chromium, ...others } = shown;
  assert.deepEqual(Object.keys(others), ["firefox", "webkit"], "a browser has not finished");
  assert.deepEqual(Object.keys(chromium), ["own", ...EXAMPLES]);
  for (const [kind, seen] of Object.entries(others)) assert.deepEqual(seen, chromium, kind);
});

/** A plan of one's own differs from each example in these. */
async function fillIn(browser) {
  await browser.fill("#container-height_cm", "37,5");
  await goToStep(browser, "crop");
  await setDate(browser, "#crop-date", "2027-05-12");
  await goToStep(browser, "fertilizer");
  await goToStep(browser, "climate");
  await goToStep(browser, "container");
}

/** All that a plan shows: figures, the drawing's sentence on three days, every table, the card. */
async function result(browser) {
  const all = { ...(await figures(browser)), days: [] };
  for (const keys of [[KEYS.home], [KEYS.right, KEYS.right, KEYS.right], [KEYS.end]]) {
    const before = await browser.text("#section-sentence");
    await browser.press("#day", keys);
    await browser.until("the drawing follows the slider", (was) => document.querySelector("#section-sentence").innerText.replaceAll(/\s+/g, " ").trim() !== was, before);
    all.days.push(await browser.text("#section-sentence"));
  }
  await browser.until("all folds are open", unfolded, ".figures details:not(#chances, #chances *)");
  all.rest = await browser.run(() => document.querySelector(".figures").textContent.replaceAll(/\s+/g, " "));
  // The card is for paper; on the screen its text is not laid out.
  all.card = await browser.run(() => document.querySelector(".card").textContent.replaceAll(/\s+/g, " "));
  const problems = await browser.run(() => document.querySelector(".summary")?.innerText ?? "");
  assert.equal(problems, "", "entries to mend");
  assert.match(all.card, /may only fall/);
  assert.ok(all.card.includes(all.fill), "the card has the fill mark");
  assert.ok(await browser.run(() => !document.querySelector(".print-button").disabled), "the card cannot be printed");
  return all;
}
