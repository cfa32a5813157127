// The card is one page of A4 or Letter, with everything on it, whatever there is to say.

import assert from "node:assert/strict";
import test from "node:test";
import { HARD, metric, open } from "./chemistry.mjs";
import { solved } from "./command.mjs";
import { dense, print } from "./print.mjs";
import { EXAMPLES, plain } from "./screen.mjs";

const WORST = {
  ...HARD,
  "fertilizer.water.alkalinity_mg_per_l_caco3": "400",
  "fertilizer.water.na_mg_per_l": "300",
  "fertilizer.water.cl_mg_per_l": "400",
  "fertilizer.raw_water_ec_ms_per_cm": "1.9",
  "fertilizer.dosing": "stocks",
  "fertilizer.target_ec_ms_per_cm": "3",
  "fertilizer.acid": "phosphoric",
  "fertilizer.crops_in_a_row": "4",
  "fertilizer.stock_b_magnesium_sulfate_g_per_l": "450",
  "fertilizer.store_temperature_c": "1",
  "container.count": "4",
  "crop.kind": "basil",
  "crop.target_head_g": "700",
  "climate.kind": "dry_summer",
  "climate.shelter": "lamps",
  "climate.temperature_max_c": "38",
  "climate.lamp_ppfd_umol_per_m2_s": "60",
};
const LONG_NAME = "The second of the long tanks behind the potting shed, for Wednesday's group";

async function assertOnePage(screen, what) {
  const lines = await screen.cardLines();
  for (const format of ["A4", "Letter"]) {
    const { pages, text, file } = await screen.printCard(format);
    assert.equal(pages.length, 1, `${what}: pages of ${format}, ${file}`);
    for (const line of lines) assert.ok(dense(text).includes(dense(line)), `${what}: ${format} lacks '${line}'`);
  }
}

/** Type is set small only where the page is full: on the lower of the two sheets three quarters of it. */
async function assertLarge(page, what) {
  await page.emulateMedia({ media: "print" });
  const full = await page.locator(".card").evaluate((card) => {
    // A sheet of US Letter less its margins, of 11 mm.
    const [width, height] = [215.9 - 22, 279.4 - 22];
    card.style.width = `${width}mm`;
    const share = (card.getBoundingClientRect().height / 96) * (25.4 / height);
    card.style.width = "";
    return card.querySelector(".card-body").dataset.type === "0" ? 1 : share;
  });
  await page.emulateMedia({ media: null });
  assert.ok(full >= 0.75, `${what}: small type on a page that is ${full.toFixed(2)} full`);
}

for (const example of EXAMPLES) {
  test(`${example}: the card is one page, however much there is to say`, async (t) => {
    const screen = await open(t, example);
    await assertOnePage(screen, "as it comes");
    await assertLarge(screen.page, "as it comes");
    await screen.planName.fill(LONG_NAME);
    await screen.enter(WORST);
    assert.deepEqual(await screen.summary.allInnerTexts(), []);
    assert.ok((await screen.findings()).filter(({ weight }) => weight !== "Good").length >= 10, "not the worst case");
    await assertOnePage(screen, "stocks, acid and an analysis");
    await screen.chooseUnits("us");
    await assertOnePage(screen, "the same in gallons");

    // Every salt of the list, and one that is not on it.
    await screen.enter({ "fertilizer.dosing": "salts", "fertilizer.acid": "nitric", "fertilizer.recipe": "hoagland_arnon_2" });
    const keys = await screen
      .field("fertilizer.salts[0].salt")
      .evaluate((list) => [...list.options].map((option) => option.value).filter((key) => key !== ""));
    for (const [index, key] of keys.entries()) await screen.enter({ [`fertilizer.salts[${index}].salt`]: key });
    await screen.enter({ [`fertilizer.salts[${keys.length}].salt-own`]: "(NH4)2HPO4" });
    assert.equal(await screen.summary.count(), 0);
    await assertOnePage(screen, "salts, in gallons");
    await screen.chooseUnits("metric");
    await assertOnePage(screen, "salts");
  });
}

test("the card says where the level should stand, every second week", async (t) => {
  const screen = await open(t, "bucket");
  const { weeks } = await solved(screen);
  const lines = await screen.cardLines();
  assert.ok(lines.some((text) => text.startsWith("Every second week measure from the rim down to the surface.")));
  const told = (await screen.page.locator(".card-levels li").allTextContents()).map(plain);
  const said = told.map((line) => /^(\d+ [A-Z][a-z]+ \d{4}): ([\d.]+) cm$/.exec(line)).map(([, date, level]) => [date, Number(level)]);
  const wanted = weeks.filter(({ day }) => day > 0 && day % 14 === 0);
  const written = (date) =>
    new Date(date).toLocaleDateString("en-GB", { day: "numeric", month: "short", year: "numeric", timeZone: "UTC" });
  assert.ok(wanted.length > 1);
  assert.deepEqual(said.map(([date]) => date), wanted.map(({ date }) => written(date)));
  // To a millimetre, as it is shown.
  for (const [index, { below_rim_cm }] of wanted.entries()) assert.ok(Math.abs(said[index][1] - below_rim_cm) <= 0.051, told[index]);
});

test("the card says which water, and how much of it is rain", async (t) => {
  const screen = await open(t, "bucket");
  for (const [share, first, fill] of [
    [0, /^Fill about halfway with tap or well water \(EC about 0\.3\smS\/cm\)\.$/, /with the same water/],
    [20, /^Pour in 3\.9\sL of rain water, then tap or well water to about halfway\.$/, /with tap or well water/],
    [60, /^Pour in 11\.6\sL of rain water\.$/, /with tap or well water/],
    [100, /^Fill about halfway with rain water, or water as pure\.$/, /with the same water/],
  ]) {
    await screen.enter({ "fertilizer.rain_pct": String(share) });
    // A fifth and three fifths of the 19.3 L that the headline names.
    assert.match(await screen.text(), /19\.3\sL/);
    await screen.page.locator(".print-button:enabled").waitFor();
    const lines = await screen.cardLines();
    assert.ok(lines.some((line) => first.test(line)), `${share}: ${lines.join(" | ")}`);
    assert.ok(lines.some((line) => /^Fill to the mark/.test(line) && fill.test(line)), `${share}: ${lines.join(" | ")}`);
  }
});

test("the dose stands large on the card, for so many plants", async (t) => {
  const screen = await open(t, "bucket");
  const dose = await screen.page.locator("#figure-dose").innerText();
  await screen.page.emulateMedia({ media: "print" });
  assert.equal(await screen.page.locator(".card-dose").innerText(), dose);
  // 21 g in 19.3 L, each as shown.
  assert.match(plain(await screen.page.locator(".card-top").innerText()), /21 g .*For one container with 3 plants\. Another volume: 1\.1 g\/L\./);
});

// Spanish says it with more letters.
for (const example of EXAMPLES) {
  test(`${example}: the card in Spanish is one page too`, async (t) => {
    const screen = await open(t, example, {}, { context: { locale: "es-ES" } });
    const salts = { "fertilizer.dosing": "salts" };
    for (const entries of [{}, { "fertilizer.acid": "citric" }, { "climate.shelter": "porch" }, WORST, salts]) {
      await screen.enter(entries);
      await screen.page.locator(".print-button:enabled").waitFor();
      for (const format of ["A4", "Letter"]) {
        const { pages, file } = await print(screen.page, { format });
        assert.equal(pages.length, 1, `${JSON.stringify(entries)}: pages of ${format}, ${file}`);
      }
      await assertLarge(screen.page, JSON.stringify(entries));
    }
    // The fullest of them, under a name of two lines.
    await screen.planName.fill(LONG_NAME);
    assert.equal((await print(screen.page, { format: "Letter" })).pages.length, 1, "a long name");
  });
}
