// What the tests of the chemistry share: a hard water, and the parts of the result that speak of doses.

import assert from "node:assert/strict";
import { DESKTOP } from "./rig.mjs";
import { Screen } from "./screen.mjs";

export const metric = { viewport: DESKTOP, context: { locale: "en-GB" } };
/** What no text may hold. */
export const NO_FIGURE = /NaN|Infinity|∞|\binf\b|undefined|null/;

/** A hard well: 7.3 mmol/L of charge either way, and the EC of its ions. */
export const HARD = {
  "fertilizer.water_kind": "analysis",
  "fertilizer.raw_water_ec_ms_per_cm": "0.68",
  "fertilizer.water.ph": "7.4",
  "fertilizer.water.alkalinity_mg_per_l_caco3": "215",
  "fertilizer.water.ca_mg_per_l": "90",
  "fertilizer.water.mg_mg_per_l": "18",
  "fertilizer.water.na_mg_per_l": "28",
  "fertilizer.water.k_mg_per_l": "3",
  "fertilizer.water.cl_mg_per_l": "45",
  "fertilizer.water.so4_mg_per_l": "70",
  "fertilizer.water.no3_mg_per_l": "15",
};

const sentences = async (screen) => (await screen.findings()).map((finding) => finding.text);
/** The findings that match. */
export const saying = async (screen, pattern) => (await sentences(screen)).filter((text) => pattern.test(text));
/** The table of doses: what to how much. */
export const doses = async (screen) => new Map((await screen.table("Every dose, for one container")).rows);

/** Opens a ready plan and fills in entries. */
export async function open(t, example, entries = {}, options = metric) {
  const screen = await Screen.open(t, options);
  await screen.openExample(example);
  await screen.enter(entries);
  assert.equal(await screen.summary.count(), 0, "there are problems");
  return screen;
}
