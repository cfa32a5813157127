// What a group takes along on paper, on A4 and US Letter and in both systems of units: small cards with
// room for names, the list for shopping and mixing, and the weekly record. The figures are those of the
// native command.

import assert from "node:assert/strict";
import test from "node:test";
import { solved } from "./command.mjs";
import { dense, print } from "./print.mjs";
import { TABLET } from "./rig.mjs";
import { Screen } from "./screen.mjs";

const GB = { locale: "en-GB" };
const CONTAINERS = 12;

async function group(t) {
  const screen = await Screen.open(t, { viewport: TABLET, context: GB });
  await screen.openExample("bucket");
  await screen.enter({ "container.count": String(CONTAINERS), "fertilizer.dosing": "stocks" });
  return screen;
}

const choose = (screen, label) => screen.choosePaper(label);

/** Figures with a unit in a printed text, each with half of its last digit. */
const figures = (text, unit, scale = 1) =>
  [...text.matchAll(new RegExp(`([\\d,]+(?:\\.\\d+)?)\\s*${unit}(?![A-Za-z/])`, "g"))].map(([, digits]) => ({
    value: scale * Number(digits.replaceAll(",", "")),
    half: 0.5 * scale * 10 ** -(digits.split(".")[1]?.length ?? 0),
  }));

/** Whether one of the figures is the wanted one, as far as it is shown. */
const among = (found, wanted) => found.some(({ value, half }) => Math.abs(value - wanted) <= half * (1 + 1e-9));

for (const format of ["A4", "Letter"]) {
  test(`small cards, ${format}: one for each container, with room for a name`, async (t) => {
    const screen = await group(t);
    await choose(screen, "Small cards for a class");
    const { pages, text } = await print(screen.page, { format });
    assert.equal(text.match(/(?:^|\f)Name$/gm)?.length, CONTAINERS);
    assert.ok(pages.length <= 3, `${pages.length} pages`);
    const { fill, calendar } = await solved(screen);
    const mark = await screen.page.locator("#figure-fill").innerText();
    assert.equal(dense(text).split(dense(mark)).length - 1, CONTAINERS, mark);
    assert.ok(among(figures(text, "L"), fill.volume_l));
    assert.ok(text.includes(calendar.transplanting.slice(0, 4)));
  });

  test(`list for the group, ${format}: all grams, the stocks to prepare, millilitres for each`, async (t) => {
    const screen = await group(t);
    await choose(screen, "List for the group");
    const { text } = await print(screen.page, { format });
    const outcome = await solved(screen);
    // The page's own sums against the single container: twelve times as much.
    assert.ok(among(figures(text, "L"), outcome.fill.volume_l * CONTAINERS));
    assert.ok(text.includes(`${outcome.fill.plants * CONTAINERS} net pots`));
    assert.equal(outcome.stocks.length, 2);
    for (const stock of outcome.stocks) {
      const dose = outcome.fertilizer.doses.find(({ material }) => material === stock.material);
      assert.ok(among(figures(text, "mL"), dose.volume_ml), `${dose.volume_ml} mL of each`);
      for (const { g_per_l: strength } of stock.contents) {
        const grams = strength * (dose.volume_ml / 1000) * CONTAINERS;
        const shown = [...figures(text, "g"), ...figures(text, "kg", 1000)];
        assert.ok(among(shown, grams), `${grams} g in all\n${text}`);
      }
    }
  });

  test(`weekly record, ${format}: every week with what is expected and room for what is read`, async (t) => {
    const screen = await group(t);
    await choose(screen, "Weekly record");
    const { pages, text } = await print(screen.page, { format });
    const { weeks, season } = await solved(screen);
    assert.equal(weeks.at(-1).day, season.days_followed);
    assert.equal(pages.length, 1);
    for (const { below_rim_cm: below, ec_ms_per_cm: strength } of weeks) {
      assert.ok(among(figures(text, "cm"), below), `${below} cm`);
      assert.ok(among(figures(text, "mS/cm"), strength), `${strength} mS/cm`);
    }
  });
}

test("the handouts are in the reader's units", async (t) => {
  const screen = await group(t);
  await screen.chooseUnits("us");
  await choose(screen, "Weekly record");
  const { text } = await print(screen.page);
  const { weeks } = await solved(screen);
  assert.doesNotMatch(text, /\d\s*cm(?![A-Za-z])(?<!S\/cm)/);
  assert.match(text, /\d\s*in\b/);
  assert.ok(weeks.length > 3);
});

test("what is unsafe stands on the list and on the record first", async (t) => {
  const screen = await Screen.open(t, { viewport: TABLET, context: GB });
  await screen.openExample("covered_tank");
  await screen.enter({ "build.stands_on": "balcony_or_roof" });
  for (const paper of ["Small cards for a class", "List for the group", "Weekly record"]) {
    await choose(screen, paper);
    const { pages } = await print(screen.page);
    assert.match(pages[0], /Stop and read/, paper);
  }
});
