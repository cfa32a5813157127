// Blends and salts of the grower's own: kept once, at hand in every plan.

import assert from "node:assert/strict";
import test from "node:test";
import { open, saying } from "./chemistry.mjs";
import { Screen } from "./screen.mjs";
import { TABLET } from "./rig.mjs";

const LABEL = {
  "fertilizer.blend": "own",
  "fertilizer.label.nitrogen_pct": "12",
  "fertilizer.label.nitrate_n_pct": "9",
  "fertilizer.label.ammonium_n_pct": "3",
  "fertilizer.label.urea_n_pct": "0",
  "fertilizer.label.p2o5_pct": "7",
  "fertilizer.label.k2o_pct": "21",
};

const dose = async (screen) => (await screen.figures()).dose;

test("a blend that is kept serves another plan, after a reload, until it is forgotten", async (t) => {
  const screen = await open(t, "bucket", LABEL);
  const { page } = screen;
  const wanted = await dose(screen);
  assert.match(wanted, / of 12\u20117\u201121 fertilizer$/);
  await screen.button("Keep this label for all plans").click();
  await screen.button("Use 12-7-21").waitFor();
  await page.locator("#blend-name").fill("porch bag");
  await screen.button("Keep this label for all plans").click();
  await screen.button("Use porch bag").waitFor();
  await screen.reload();

  await screen.openMenu();
  await screen.button("New plan").click();
  await screen.openExample("bucket");
  assert.notEqual(await dose(screen), wanted, "the plan has the blend already");
  await screen.goTo("fertilizer");
  await screen.button("Use porch bag").click();
  assert.equal(await dose(screen), wanted);
  assert.equal(await screen.field("fertilizer.label.nitrogen_pct").inputValue(), "12");

  await screen.button("Forget the blend porch bag").click();
  await screen.focusMoves("fertilizer-blend");
  assert.equal(await screen.button("Use porch bag").count(), 0);
  assert.equal(await dose(screen), wanted, "what a plan holds is its own");
  assert.equal(await screen.button("Use 12-7-21").count(), 1);
});

test("a wrong label cannot be kept", async (t) => {
  const screen = await Screen.open(t, { viewport: TABLET, touch: true });
  await screen.openExample("bucket");
  await screen.enter({ ...LABEL, "fertilizer.label.nitrate_n_pct": "4" });
  assert.ok(await screen.button("Keep this label for all plans").isDisabled());
});

test("a salt by its formula is kept with purity and price, and chosen from the list", async (t) => {
  const screen = await open(t, "bucket", {
    "fertilizer.dosing": "salts",
    "fertilizer.salts[0].salt": "",
    "fertilizer.salts[0].salt-own": "Ca(NO3)2.4H2O",
    "fertilizer.salts[0].purity_pct": "97",
    "fertilizer.salts[0].price_per_kg": "1.5",
  });
  const wanted = await dose(screen);
  assert.equal(await screen.button("Keep this salt for all plans").count(), 1);
  await screen.button("Keep this salt for all plans").click();
  await screen.button("Keep this salt no longer").waitFor();
  await screen.reload();

  await screen.openMenu();
  await screen.button("New plan").click();
  await screen.openExample("bucket");
  await screen.enter({ "fertilizer.dosing": "salts" });
  await screen.enter({ "fertilizer.salts[0].salt": "Ca(NO3)2.4H2O" });
  assert.equal(await screen.field("fertilizer.salts[0].purity_pct").inputValue(), "97");
  assert.equal(await screen.field("fertilizer.salts[0].price_per_kg").inputValue(), "1.5");
  assert.equal(await dose(screen), wanted);

  await screen.button("Keep this salt no longer").click();
  await screen.button("Keep this salt for all plans").waitFor();
  assert.equal(await screen.field("fertilizer.salts[0].salt-own").inputValue(), "Ca(NO3)2.4H2O");
});

test("stocks are judged in any proportion, and a salt that cannot dissolve is refused", async (t) => {
  const screen = await open(t, "covered_tank");
  const { rows } = await screen.table("Both stocks undiluted together");
  assert.equal(rows.length, 5);
  for (const [a, b, index] of rows) {
    assert.equal(Number.parseInt(a, 10) + Number.parseInt(b, 10), 100);
    // Above zero in every one of them: it falls out.
    assert.match(index, /gypsum \d/i);
  }
  assert.equal((await saying(screen, /Never pour stock A and stock B together.*once thinned to \d+ times/)).length, 1);
  await screen.enter({
    "fertilizer.store_temperature_c": "0",
    "fertilizer.stock_b_magnesium_sulfate_g_per_l": "490",
  });
  assert.match(await screen.summary.innerText(), /does not dissolve when the store is coldest: at most 4\d\d/);
});
