// A crop under way: its readings bend the forecast as the native command says; they are kept, travel,
// and go out and in as CSV; closed, the crop offers its
// correction.

import assert from "node:assert/strict";
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import test from "node:test";
import { metric } from "./chemistry.mjs";
import { answer } from "./command.mjs";
import { begun, READINGS, solved, withReadings } from "./notebooks.mjs";
import { PHONE } from "./rig.mjs";
import { plain } from "./screen.mjs";

/** All numbers of a text. */
const numbers = (text) => text.match(/[\d.]+/g).map(Number);

/** The two ends of a band as shown are these: half a unit of the last digit either way, and what
 *  rounding to even may add. */
function sameBand(shown, band, what) {
  const texts = shown.match(/[\d.]+/g);
  for (const [text, end] of [[texts[0], band.low], [texts[1] ?? texts[0], band.high]]) {
    const digits = text.split(".")[1]?.length ?? 0;
    assert.ok(Math.abs(Number(text) - end) <= 0.5 * 10 ** -digits + 1e-9, `${what}: ${shown}, not ${end}`);
  }
}

const width = (text) => {
  const [low, high] = numbers(text);
  return (high ?? low) - low;
};

test("five readings bend and narrow the forecast, as the command has it", async (t) => {
  const screen = await begun(t);
  assert.equal(await screen.page.locator(".bench").isVisible(), false, "the plan still stands beside the notebook");
  await screen.weighed();
  const alone = await solved(await screen.download("Save this notebook to a file"));
  const before = await screen.sentence();
  assert.equal(
    before,
    `By the plan alone the solution ends on day ${alone.solution_ends_day.middle}, ${alone.ends_after_harvest_days} days after harvest.`,
  );
  for (const reading of READINGS) await screen.read(reading);
  await screen.weighed();
  const json = await screen.download("Save this notebook to a file");
  assert.equal(JSON.parse(json).readings.length, READINGS.length);
  // A comma as it was typed.
  assert.equal(JSON.parse(json).readings[4].level_cm, 23.6);
  const outcome = await solved(json);
  const after = await screen.sentence();
  assert.notEqual(after, before);
  assert.equal(
    after,
    `At this pace the solution ends on day ${outcome.solution_ends_day.middle}, ${outcome.ends_after_harvest_days} days after harvest.`,
  );
  const bands = await screen.bands();
  for (const [name, key] of [
    ["Solution ends", "solution_ends_day"],
    ["Drawn from one container", "water_l"],
    ["One head", "head_g"],
    ["Water for heads", "water_per_kg_l"],
    ["Moist air at the end", "gap_at_end_cm"],
  ]) {
    sameBand(bands[name].before, alone[key] ?? alone.chances[key], `${name} before`);
    sameBand(bands[name].after, outcome[key] ?? outcome.chances[key], `${name} after`);
  }
  for (const name of ["Solution ends", "Drawn from one container", "Water for heads"]) {
    assert.ok(width(bands[name].after) < width(bands[name].before), `${name} is no narrower: ${JSON.stringify(bands[name])}`);
  }
  const text = plain(await screen.notebook.innerText());
  assert.match(text, new RegExp(`lasts to harvest in ${outcome.chances.lasts_of_100} of 100 seasons that agree`));
  assert.equal(outcome.resampled, true);
  assert.match(text, new RegExp(`together they are worth ${Number(outcome.effective_size.toPrecision(2))} equally likely ones`));

  // The command says the same of the plan with the readings in a table.
  const folder = await mkdtemp(join(tmpdir(), "slackwater-"));
  const table = join(folder, "readings.csv");
  await writeFile(table, await screen.download("Save the readings as CSV"));
  const told = await answer(JSON.stringify(JSON.parse(json).plan), "--readings", table);
  await rm(folder, { recursive: true });
  assert.deepEqual(told.notebook, outcome);

  // The top-up: how much, how strong, and what it must not rise above.
  const { top_up: topUp } = outcome;
  const said = plain(await screen.page.locator(".forecast .part", { hasText: "Top-up" }).innerText());
  assert.ok(Math.abs(numbers(/Add ([\d.]+) L/.exec(said)[0])[0] - topUp.litres) <= 0.05 + 1e-9, said);
  assert.match(said, topUp.mixture === 0 ? /as raw water/ : /mixed at/);
  const ceiling = numbers(/Never above ([\d.]+) cm below the rim/.exec(said)[0])[0];
  assert.ok(Math.abs(ceiling - topUp.ceiling_below_rim_cm) <= 0.05 + 1e-9, said);
  assert.match(said, /Air roots have formed down to there, and they drown/);

  // Every level is a dot of the picture; the ceiling is a line at its own height.
  const dots = await screen.page.locator(".notebook .dot[d]").getAttribute("d");
  assert.equal(dots.match(/M/g).length, READINGS.length);
  const [, height] = /M0 ([\d.]+)H100/.exec(await screen.page.locator(".notebook .line-ceiling").getAttribute("d"));
  const top = numbers(await screen.page.locator(".notebook .tick.top").innerText())[0];
  assert.ok(Math.abs((1 - height / 100) * top - topUp.ceiling_cm) < 0.01);
});

test("a notebook outlives reload, and a wipe by its export, alone and with all plans", async (t) => {
  const screen = await withReadings(t);
  await screen.weighed();
  const sentence = await screen.sentence();
  const kept = await screen.keptNotebooks();
  await screen.reload();
  assert.deepEqual(await screen.keptNotebooks(), kept);
  const open = (of) => of.page.locator(".notebooks .plan").click();
  await open(screen);
  await screen.weighed();
  assert.equal(await screen.sentence(), sentence);
  const alone = await screen.download("Save this notebook to a file");
  await screen.openMenu();
  const all = await screen.download("Save all plans to a file");

  await screen.page.evaluate(() => localStorage.clear());
  await screen.reload();
  assert.equal(await screen.page.locator(".notebooks .plan").count(), 0);
  for (const file of [alone, all]) {
    await screen.page
      .locator(".file input:visible")
      .first()
      .setInputFiles({ name: "file.json", mimeType: "application/json", buffer: Buffer.from(file) });
    assert.match(plain(await screen.page.locator(".offer").innerText()), /My bucket, planted 1 Feb 2027 \(a notebook\)/);
    await screen.button("Add to my plans").click();
  }
  // Twice the same is kept once.
  assert.deepEqual(await screen.keptNotebooks(), kept);
  await open(screen);
  await screen.weighed();
  assert.equal(await screen.sentence(), sentence);
});

test("readings go out as CSV and come in again, the same", async (t) => {
  const screen = await withReadings(t);
  const n = await screen.add();
  await screen.set(`reading-${n}-date`, "2027-03-09");
  await screen.page.locator(`#reading-${n}-level_from`).selectOption("mark");
  await screen.set(`reading-${n}-level_cm`, "8 in");
  await screen.set(`reading-${n}-temperature_c`, "19");
  await screen.set(`reading-${n}-added_l`, "1.5");
  await screen.set(`reading-${n}-note`, 'pale, "dry" rim; 2 snails');
  await screen.button("Done").click();
  const [{ readings }] = await screen.keptNotebooks();
  // NIST Handbook 44, appendix C: an inch is 2.54 cm.
  assert.equal(readings[5].level_cm, 20.32);
  const csv = await screen.download("Save the readings as CSV");
  assert.match(csv, /^date,container,level_cm,level_from,ec_ms_per_cm,temperature_c,added_l,note\n10,,3\.2,,1\.3,,,\n/);
  for (let left = readings.length; left > 0; left -= 1) {
    await screen.page.locator(".reading-line").first().click();
    await screen.button("Remove this reading").click();
  }
  assert.deepEqual((await screen.keptNotebooks())[0].readings, []);
  await screen.chooseFile("#notebook-file", csv, "readings.csv");
  await screen.page.getByText("6 readings were added; 0 were there already.").waitFor();
  const numbered = (all) => all.map((it) => ({ ...it, date: String(it.date) }));
  const [again] = await screen.keptNotebooks();
  assert.deepEqual(numbered(again.readings), numbered(readings));
  await screen.chooseFile("#notebook-file", csv, "readings.csv");
  await screen.page.getByText("0 readings were added; 6 were there already.").waitFor();
  await screen.chooseFile("#notebook-file", "date,depth\n1,2", "readings.csv");
  await screen.page.getByText("Line 1: The column 'depth' is not known.").waitFor();
  await screen.chooseFile("#notebook-file", "date,level_cm\n2027-01-01,low\n", "readings.csv");
  await screen.page.getByText("Line 2: date: That is 31 days before planting.").waitFor();
  await screen.page.getByText("Line 2: level_cm: 'low' is not a number.").waitFor();
  assert.deepEqual((await screen.keptNotebooks())[0].readings, again.readings);
});

test("closed, a crop offers its correction; one tap puts it into the plan, one takes it back", async (t) => {
  const screen = await withReadings(t, { viewport: PHONE, touch: true, ...metric });
  await screen.cut(38, 3, 610);
  await screen.button("Close this crop").tap();
  await screen.weighed();
  const outcome = await solved(await screen.download("Save this notebook to a file"));
  assert.equal(outcome.top_up, null);
  const { closing, next_plan: next } = outcome;
  const text = plain(await screen.notebook.innerText());
  // By hand: what was lost of the fill, over the mass of the heads. The bucket's own volumes are held to published
  // formulae elsewhere.
  assert.equal(closing.heads, 3);
  assert.ok(Math.abs(closing.water_per_kg_l - closing.water_l / 0.61) < 1e-9);
  assert.match(await screen.sentence(), new RegExp(`It took ${Number(closing.water_per_kg_l.toPrecision(2))} L/kg of fresh heads`));
  assert.match(text, new RegExp(`3 heads weighed ${Math.round(closing.head_g)} g on average`));
  assert.match(text, /Water factor: 1 in this plan, 1\.\d+ by what you read/);
  const factors = async () => {
    const { plans } = JSON.parse(await screen.stored());
    return [plans[0].plan.crop.growth_factor, plans[0].plan.crop.water_factor];
  };
  const before = await factors();
  await screen.page.locator("#notebook-correct").tap();
  await screen.focusMoves("notebook-uncorrect");
  const [growth, water] = next.map(({ entry }) => entry);
  assert.deepEqual(await factors(), [growth, water]);
  // The crop that was followed keeps its own plan.
  const { notebooks } = JSON.parse(await screen.stored());
  assert.equal(notebooks[0].notebook.plan.crop.water_factor, before[1]);
  await screen.page.locator("#notebook-uncorrect").tap();
  await screen.focusMoves("notebook-correct");
  assert.deepEqual(await factors(), before);

  // Without an open plan, the next one begins with it.
  await screen.openMenu();
  await screen.button("New plan").tap();
  await screen.page.locator(".notebooks .plan").tap();
  await screen.weighed();
  await screen.button("Begin the next plan with this correction").tap();
  await screen.focusMoves("step-1");
  assert.match(await screen.planName.inputValue(), /\(next crop\)$/);
  assert.equal(await screen.field("crop.water_factor").inputValue(), String(water));
});

test("what is wrong stands beside its box, says what is allowed, and stays as it was typed", async (t) => {
  const screen = await begun(t);
  const n = await screen.add();
  assert.equal(await screen.says(`reading-${n}-date`), "", "a line that is only begun is no fault");
  const wrong = async (column, text, says) => {
    const id = `reading-${n}-${column}`;
    await screen.set(id, text);
    assert.equal(await screen.page.locator(`#${id}`).inputValue(), text);
    assert.equal(await screen.page.locator(`#${id}`).getAttribute("aria-invalid"), "true");
    assert.match(await screen.says(id), says);
  };
  await screen.set(`reading-${n}-level_cm`, "5");
  assert.equal(await screen.says(`reading-${n}-date`), "Write the day.");
  await wrong("date", "soon", /'soon' is no day\. Write days since planting, such as 12, or a date/);
  await wrong("date", "2027-01-30", /2 days before planting/);
  await wrong("date", "-1", /1 days? before planting/);
  await wrong("date", "400", /From the day of planting to day 150 after it/);
  await screen.set(`reading-${n}-date`, "12");
  assert.equal(await screen.says(`reading-${n}-date`), "");
  await wrong("level_cm", "low", /'low' is not a number\. Write a number of cm, or leave it empty/);
  await wrong("level_cm", "-3", /−3 cm is outside what is allowed: 0 cm to 35 cm\. A surface is never above the rim/);
  await wrong("level_cm", "40", /40 cm is outside what is allowed: 0 cm to 35 cm\. The container is not deeper/);
  await wrong("ec_ms_per_cm", "strong", /'strong' is not a number/);
  await wrong("temperature_c", "90", /90 °C is outside what is allowed: −10 °C to 60 °C/);
  await wrong("added_l", "-2", /outside what is allowed: 0 .*L/);
  // The forecast goes on without that line.
  await screen.page.locator(".pace", { hasText: "1 marked line is left out until it is mended." }).waitFor({ timeout: 60_000 });
  await screen.set("notebook-planted", "last week");
  assert.match(await screen.says("notebook-planted"), /'last week' is no date of the calendar/);
  assert.equal(await screen.sentence(), "The forecast waits until the marked entries are mended.");
  await screen.cut("12", "some", "-1");
  assert.match(await screen.says("cut-1-heads"), /'some' is not a number/);
  assert.match(await screen.says("cut-1-mass_g"), /is outside what is allowed/);
  // Inches, and back again.
  await screen.chooseUnits("us");
  assert.match(await screen.says(`reading-${n}-temperature_c`), /14 °F to 140 °F/);
  await screen.set(`reading-${n}-level_cm`, "3.5");
  await screen.chooseUnits("metric");
  assert.equal(await screen.page.locator(`#reading-${n}-level_cm`).inputValue(), "8.89");
});

test("an edit, a removal and a deletion are each taken back", async (t) => {
  const screen = await begun(t);
  await screen.read(["10", "3"]);
  await screen.read(["20", "6"]);
  const kept = await screen.keptNotebooks();
  await screen.page.locator("#reading-1").click();
  await screen.set("reading-1-level_cm", "4");
  assert.equal((await screen.keptNotebooks())[0].readings[0].level_cm, 4);
  await screen.button("Undo the last change").click();
  assert.deepEqual(await screen.keptNotebooks(), kept);
  await screen.page.locator("#reading-2").click();
  await screen.button("Remove this reading").click();
  await screen.focusMoves("notebook-undo");
  assert.equal((await screen.keptNotebooks())[0].readings.length, 1);
  await screen.page.keyboard.press("Enter");
  assert.deepEqual(await screen.keptNotebooks(), kept);
  // In the order of their days once the boxes are closed.
  await screen.page.locator("#reading-1").click();
  await screen.set("reading-1-date", "30");
  await screen.button("Done").click();
  assert.deepEqual((await screen.keptNotebooks())[0].readings.map(({ date }) => date), ["20", "30"]);
  const sorted = await screen.keptNotebooks();
  await screen.button("Delete this notebook").click();
  await screen.focusMoves("notebook-undelete");
  assert.deepEqual(await screen.keptNotebooks(), []);
  await screen.page.keyboard.press("Enter");
  await screen.focusMoves("notebooks");
  assert.deepEqual(await screen.keptNotebooks(), sorted);
});
