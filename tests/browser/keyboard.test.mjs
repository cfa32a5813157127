// The whole job without a pointer, and a focus that can always be seen.

import assert from "node:assert/strict";
import test from "node:test";
import { DESKTOP, PHONE } from "./rig.mjs";
import { idOf, Screen, STEPS } from "./screen.mjs";

const options = { viewport: DESKTOP, context: { locale: "en-GB" } };
// More stops than any step of the page has.
const MOST_STOPS = 200;

/** Where the focus is, and how it is seen. */
const focus = (page) =>
  page.evaluate(() => {
    const at = document.activeElement;
    if (!at || at === document.body) return null;
    // The indicator of a heading that was moved to is the place itself.
    const style = getComputedStyle(at);
    const box = at.getBoundingClientRect();
    // On a wide screen the forms scroll by themselves, beside the result.
    const pane = at.closest(".forms");
    const past = pane ? pane.scrollTop - pane.getBoundingClientRect().top : scrollY;
    const middle = document.elementFromPoint(
      Math.min(Math.max(box.left + box.width / 2, 0), innerWidth - 1),
      Math.min(Math.max(box.top + Math.min(box.height / 2, 12), 0), innerHeight - 1),
    );
    return {
      name: at.id || `${at.localName}.${at.className} '${at.textContent.trim().slice(0, 30)}'`,
      place: [...document.querySelectorAll("*")].indexOf(at),
      outlined: style.outlineStyle !== "none" && parseFloat(style.outlineWidth) >= 2,
      inView: box.bottom > 0 && box.top < innerHeight && box.right > 0 && box.left < innerWidth,
      uncovered: at.contains(middle) || middle?.closest("label")?.control === at,
      left: box.left,
      top: box.top + past,
      bottom: box.bottom + past,
      column: at.closest(".forms, .result, .head, .welcome, .glance, .notices")?.className ?? "",
    };
  });

const assertSeen = (at) => {
  assert.ok(at.outlined, `the focus on ${at.name} is not outlined`);
  assert.ok(at.inView, `the focus on ${at.name} is out of view`);
  assert.ok(at.uncovered, `the focus on ${at.name} is covered`);
};

/** Presses Tab until the focus is on `selector`; every stop on the way must be seen. */
async function tabTo(page, selector, key = "Tab") {
  for (let i = 0; i < MOST_STOPS; i += 1) {
    await page.keyboard.press(key);
    const at = await focus(page);
    if (at) assertSeen(at);
    if (await page.evaluate((wanted) => document.activeElement.matches(wanted), selector)) return;
  }
  assert.fail(`${key} does not lead to ${selector}`);
}

/** Goes to a field and types over what stands there, as Tab marks it all. */
async function typeInto(screen, path, text) {
  await tabTo(screen.page, `#${idOf(path)}`);
  await screen.page.keyboard.type(text);
}

test("from the first page to the printed card by keyboard alone", async (t) => {
  const screen = await Screen.open(t, {
    ...options,
    before: (page) =>
      page.addInitScript(() => {
        window.print = () => {
          window.printed = (window.printed ?? 0) + 1;
        };
      }),
  });
  const { page } = screen;
  await tabTo(page, "li:nth-child(2) > button.example");
  await page.keyboard.press("Enter");
  await screen.focusMoves("step-1");
  const first = await screen.figures();

  // Step 1: a list by arrow keys, there and back, and a number.
  await tabTo(page, "#container-method");
  const method = screen.field("container.method");
  await page.keyboard.press("ArrowDown");
  assert.equal(await method.inputValue(), "covered_tank");
  await page.keyboard.press("ArrowUp");
  assert.equal(await method.inputValue(), "bucket");
  await typeInto(screen, "container.height_cm", "36,5");
  await tabTo(page, ".step:not([hidden]) details > summary");
  // A covered tank, chosen in passing, asked for a look at the pots and opened it.
  if (!(await page.evaluate(() => document.activeElement.parentElement.open))) await page.keyboard.press("Enter");
  await typeInto(screen, "container.pot_immersion_cm", "1 in");
  const figures = await screen.figures();
  assert.notDeepEqual(figures, first);

  // The other steps, each by its button at the end.
  const values = { crop: ["crop.target_head_g", "180"], fertilizer: ["fertilizer.target_ec_ms_per_cm", "1.4"], climate: ["climate.humidity_pct", "75"] };
  for (const [index, step] of STEPS.entries()) {
    if (index === 0) continue;
    await tabTo(page, ".step:not([hidden]) .step-end .main");
    await page.keyboard.press(index % 2 ? "Enter" : "Space");
    await screen.focusMoves(`step-${index + 1}`);
    await typeInto(screen, ...values[step]);
  }
  await tabTo(page, ".step:not([hidden]) .step-end .main");
  await page.keyboard.press("Enter");
  await screen.focusMoves("result-heading");
  await tabTo(page, ".print-button");
  await page.keyboard.press("Enter");
  assert.equal(await page.evaluate(() => window.printed), 1);

  // The season by arrow keys.
  await tabTo(page, "#day");
  const { day } = await screen.drawing();
  await page.keyboard.press("ArrowLeft");
  assert.equal((await screen.drawing()).day, day - 1);
  await page.keyboard.press("Home");
  assert.equal((await screen.drawing()).day, 0);
  await page.keyboard.press("ArrowRight");
  assert.equal((await screen.drawing()).day, 1);

  // What a figure is made of opens and closes.
  await tabTo(page, ".headline div:first-child .working > summary", "Shift+Tab");
  await page.keyboard.press("Space");
  await page.locator(".working dl").first().waitFor();
  await page.keyboard.press("Enter");
  await page.locator(".working dl").first().waitFor({ state: "hidden" });

  // What is folded opens, and its table can be scrolled.
  await tabTo(page, ".drawing .fold > summary");
  await page.keyboard.press("Enter");
  await page.locator(".drawing .fold[open] .scroll").first().waitFor();
  await tabTo(page, ".drawing .fold[open] .scroll");

  // Back up to the steps, the units and the plans.
  await tabTo(page, ".step-button[aria-current]", "Shift+Tab");
  await tabTo(page, "#units", "Shift+Tab");
  await page.keyboard.press("ArrowDown");
  assert.match((await screen.figures()).fill, / in /);
  await tabTo(page, ".menu > summary");
  await page.keyboard.press("Space");
  await tabTo(page, ".sheet .plan[aria-current]");
  await tabTo(page, ".sheet .row button:nth-child(2)");
  await page.keyboard.press("Enter");
  await screen.focusMoves("step-1");
  assert.match(await screen.planName.inputValue(), /copy/);
});

test("a problem is found and mended by keyboard", async (t) => {
  const screen = await Screen.open(t, options);
  const { page } = screen;
  await tabTo(page, "button.example");
  await page.keyboard.press("Enter");
  await screen.focusMoves("step-1");
  await typeInto(screen, "container.diameter_cm", "wide");
  await tabTo(page, ".step-button:not([aria-current])", "Shift+Tab");
  await page.keyboard.press("Enter");
  await screen.focusMoves("step-4");
  await tabTo(page, ".summary a");
  await page.keyboard.press("Enter");
  await screen.focusMoves("container-diameter_cm");
  await page.keyboard.press("ControlOrMeta+a");
  await page.keyboard.type("15.4");
  assert.equal(await screen.summary.count(), 0);
});

test("salts, acid, water and prices by keyboard", async (t) => {
  const screen = await Screen.open(t, options);
  const { page } = screen;
  await screen.openExample("bucket");
  await screen.goTo("fertilizer");
  const { dose } = await screen.figures();

  // From rain by arrow keys to the analysis, whose fields then follow.
  await tabTo(page, "#fertilizer-water_kind");
  await page.keyboard.press("ArrowDown");
  await page.keyboard.press("ArrowDown");
  await typeInto(screen, "fertilizer.water.alkalinity_mg_per_l_caco3", "140");
  await tabTo(page, "#fertilizer-dosing");
  await page.keyboard.press("End");
  assert.equal(await screen.field("fertilizer.dosing").inputValue(), "salts");
  await tabTo(page, "#fertilizer-recipe");
  await typeInto(screen, "fertilizer.recipe_strength_pct", "60");

  // The last salt of the shelf by its formula, with a purity and a price.
  await tabTo(page, "#fertilizer-salts-11--price_per_kg");
  await tabTo(page, ".measured .row button:last-child");
  await page.keyboard.press("Enter");
  await tabTo(page, ".measured .row button:first-child", "Shift+Tab");
  await page.keyboard.press("Enter");
  await screen.focusMoves("fertilizer-salts-11--salt");
  await tabTo(page, "#fertilizer-salts-11--salt-own");
  await page.keyboard.type("Na2MoO4.2H2O");
  await typeInto(screen, "fertilizer.salts[11].purity_pct", "98");
  await typeInto(screen, "fertilizer.salts[11].price_per_kg", "45");

  await tabTo(page, "#fertilizer-acid");
  await page.keyboard.press("ArrowDown");
  await typeInto(screen, "fertilizer.target_ph", "5.9");
  await tabTo(page, ".forms .step:not([hidden]) > .fold > summary");
  await page.keyboard.press("Space");
  await typeInto(screen, "fertilizer.crops_in_a_row", "2");
  await tabTo(page, "#currency");
  await page.keyboard.press("ControlOrMeta+a");
  await page.keyboard.type("£");

  assert.equal(await screen.summary.count(), 0);
  assert.notEqual((await screen.figures()).dose, dose);
  const doses = (await screen.table("Every dose, for one container")).rows.map(([what]) => what);
  assert.ok(doses.includes("Na2MoO4.2H2O") && doses.includes("Nitric acid"), doses.join());
  assert.match(await screen.resultText(), /£\d/);
});

for (const viewport of [DESKTOP, PHONE]) {
  test(`every stop of each step is seen, in reading order, at ${viewport.width}`, async (t) => {
    const screen = await Screen.open(t, { ...options, viewport });
    const { page } = screen;
    await screen.openExample("floating_boards");
    // A full fertilizer step, with every kind of entry that it has; all of it opened.
    await screen.enter({ "fertilizer.dosing": "salts", "fertilizer.water_kind": "analysis", "fertilizer.acid": "nitric" });
    await screen.shortenShelf(3);
    await screen.enter({ "fertilizer.salts[3].salt-own": "K2SO4" });
    for (const step of STEPS) {
      await screen.goTo(step);
      await screen.unfoldAll();
      const stops = await page.evaluate(
        () =>
          [...document.querySelectorAll("a[href], button, input, select, summary, [tabindex='0']")].filter(
            (item) => !item.disabled && item.tabIndex >= 0 && item.checkVisibility({ visibilityProperty: true, contentVisibilityAuto: true }),
          ).length,
      );
      // As when the page has just been opened: the next Tab leads to its first stop.
      await page.evaluate(() => {
        document.body.tabIndex = -1;
        document.body.focus();
        document.body.removeAttribute("tabindex");
      });
      const met = [];
      for (;;) {
        await page.keyboard.press("Tab");
        const at = await focus(page);
        if (!at || met.length > MOST_STOPS) break;
        assertSeen(at);
        // A date's own parts and its calendar are stops of one control.
        if (met.at(-1)?.place !== at.place) met.push(at);
      }
      assert.equal(met.length, stops, `${step}: stops`);
      for (const [index, at] of met.entries()) {
        const before = met[index - 1];
        if (!before || before.column !== at.column) continue;
        const below = at.top >= before.top - 1;
        const beside = at.left > before.left && at.bottom > before.top - 80;
        assert.ok(below || beside, `${step}: ${at.name} is above ${before.name}, which comes first`);
        const sameLine = Math.abs(at.top - before.top) < 2;
        if (sameLine) assert.ok(at.left > before.left, `${step}: ${at.name} stands left of ${before.name}, which comes first`);
      }
    }
  });
}
