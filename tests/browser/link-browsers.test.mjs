// A link goes from each of the three engines to a fresh profile of the same engine and of another:
// the preview is opened from there, and every figure is the same to the last digit.

import assert from "node:assert/strict";
import test from "node:test";
import { choose, figures, goToStep, pressButton, setDate, start } from "./gestures.mjs";
import { startServer } from "./rig.mjs";
import { STORE, unfolded } from "./screen.mjs";
import { BROWSERS, open } from "./webdriver.mjs";

const KINDS = Object.keys(BROWSERS);

/** The main job twice, from nothing: what is chosen, and what is typed, in the order of the forms. */
const PLANS = {
  metric: {
    name: "A bucket of our own: ½ Σ",
    container: { "container-height_cm": "37,5", "container-count": "6" },
    crop: { "crop-plants_per_container": "2", "crop-target_head_g": "187,5" },
    fertilizer: { "fertilizer-target_ec_ms_per_cm": "1.37" },
    climate: { "climate-humidity_pct": "71.25" },
  },
  us: {
    name: "Boards in gallons",
    method: "floating_boards",
    container: {
      "container-length_cm": "23 ft 8 in",
      "container-width_cm": "49 1/4",
      "container-height_cm": "8",
      "container-board_length_cm": "48",
      "container-board_width_cm": "23.5",
      "container-board_thickness_cm": "1",
      "container-board_count": "12",
    },
    pipe: "inch_4",
    crop: { "crop-target_head_g": "6 1/2 oz" },
    fertilizer: { "fertilizer-target_ec_ms_per_cm": "1.37" },
    climate: {},
  },
};

const made = {};

for (const [index, kind] of KINDS.entries()) {
  for (const [units, wanted] of Object.entries(PLANS)) {
    const readers = [kind, KINDS[(index + 1) % KINDS.length]];
    test(`${kind}: a plan in ${units} units opens from its link in ${readers.join(" and ")}`, async (t) => {
      const site = await startServer(t);
      const maker = await open(t, kind);
      await start(maker, site);
      await choose(maker, "#units", units);
      await make(maker, wanted);
      const shared = await result(maker);
      const link = await maker.run(() => document.querySelector("#link").value);
      assert.ok(link.startsWith(`${site.url}#P-`), link);
      assert.ok(link.length < 400, `${link.length} characters`);
      made[units] ??= {};
      made[units][kind] = { link: new URL(link).hash, ...shared };

      for (const reader of readers) {
        const browser = await open(t, reader);
        await browser.goTo(link);
        await browser.until("the preview", () => document.querySelector(".offer")?.innerText.includes("Keep as a new plan"));
        assert.ok((await browser.text(".offer")).includes(wanted.name), "the preview names the plan");
        assert.equal(await browser.run((name) => localStorage.getItem(name), STORE), null, "kept unasked");
        await choose(browser, "#units", units);
        await pressButton(browser, "Keep as a new plan");
        await browser.until("the plan", () => document.querySelector("#figure-fill") !== null);
        assert.deepEqual(await result(browser), shared, `${kind} to ${reader}`);
        assert.equal(await browser.run(() => document.querySelector("#link").value), link);
      }
    });
  }
}

test("the three engines make the same links, and show the same figures", () => {
  assert.deepEqual(Object.keys(made), Object.keys(PLANS));
  for (const [units, { [KINDS[0]]: first, ...others }] of Object.entries(made)) {
    assert.deepEqual(Object.keys(others), KINDS.slice(1), `${units}: an engine has not finished`);
    for (const [kind, seen] of Object.entries(others)) assert.deepEqual(seen, first, `${units}: ${kind}`);
  }
});

async function make(browser, plan) {
  await pressButton(browser, "Start from what I have");
  await browser.until("the first step", () => document.activeElement?.id === "step-1");
  await browser.fill("#plan-name", plan.name);
  for (const step of ["container", "crop", "fertilizer", "climate"]) {
    if (step !== "container") await goToStep(browser, step);
    else if (plan.method) await choose(browser, "#container-method", plan.method);
    if (step === "crop") await setDate(browser, "#crop-date", "2027-05-12");
    for (const [id, text] of Object.entries(plan[step])) {
      // Folded fields are typed into as well.
      await browser.element(`#${id}`);
      await browser.run((at) => document.getElementById(at).closest("details")?.setAttribute("open", ""), id);
      await browser.fill(`#${id}`, text);
    }
    if (step === "container" && plan.pipe) await choose(browser, "#container-pipe", plan.pipe);
  }
}

/** All that a plan shows: the four figures with what stands under them, grams and EC in it, the table
 *  of pipes, and the rest beside the forms. */
async function result(browser) {
  assert.equal(await browser.run(() => document.querySelector(".summary")?.innerText ?? ""), "", "entries to mend");
  const found = await figures(browser);
  found.more = await browser.run(() => [...document.querySelectorAll(".headline .meaning")].map((line) => line.innerText.trim()));
  assert.equal(found.more.length, 4);
  assert.match(found.dose, /\d k?g\b/);
  assert.match(found.more[1], /^1\.3\d\smS\/cm at (25\s°C|77\s°F)/);
  found.pipes = await browser.run(() =>
    [...document.querySelectorAll("#pipes tbody tr")].map((row) => [...row.cells].map((cell) => cell.textContent.trim())),
  );
  const floats = await browser.run(() => document.querySelector("#container-pipe, #pipes") !== null);
  assert.equal(found.pipes.length > 5, floats, "the pipes are compared where boards float");
  await browser.until("all folds are open", unfolded, ".figures details:not(#chances, #chances *)");
  found.all = await browser.run(() => document.querySelector(".figures").textContent);
  return found;
}
