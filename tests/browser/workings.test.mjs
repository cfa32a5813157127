// What stands behind the figures: their workings, what they cost, and the tables that unfold.

import assert from "node:assert/strict";
import test from "node:test";
import { doses, HARD, metric, NO_FIGURE, open, saying } from "./chemistry.mjs";
import { DESKTOP, TABLET } from "./rig.mjs";
import { EXAMPLES, plain, Screen } from "./screen.mjs";

// What figures are made of

const PARTS = ["From", "By", "After", "How sure"];
const WORKINGS = [
  "How the fill is worked out",
  "How the dose is worked out",
  "How the harvest is worked out",
  "How the water is worked out",
  "How boards and pipes are worked out",
  "How the nutrients are worked out",
  "How the stocks are worked out",
  "How EC, pH and saturation are worked out",
  "How each day is worked out",
  "How the fitting strength is worked out",
  "How the weight is worked out",
];
/** Findings that give advice and no figure of ours. */
const NO_WORKING =
  /^(No scale at hand|Small children|Keep fertilizer|Lamps|Acid|Unusual|Open water|Cover|Light through|Algae|Expect wilting|Tip burn|Keep rain|Drain and|Use only|Line the|Harvest with)/;
const distinct = (names) => [...new Set(names)].toSorted();

async function checkWorking(working) {
  await working.locator("dl").waitFor();
  const parts = await working
    .locator("dl > *")
    .evaluateAll((all) => all.map((part) => [part.localName, part.innerText.replaceAll(/\s+/g, " ")]));
  assert.deepEqual(parts.filter(([kind]) => kind === "dt").map(([, text]) => text), PARTS);
  for (const [kind, text] of parts) {
    if (kind === "dd") assert.ok(plain(text).length >= 15 || /tape/.test(text), `'${text}' says nothing`);
    assert.doesNotMatch(text, NO_FIGURE);
  }
  const [, from] = parts[1];
  return from;
}

test("each figure's working opens and closes by touch", async (t) => {
  const screen = await open(t, "floating_boards", {}, { ...metric, viewport: TABLET, touch: true });
  const { page } = screen;
  for (const fold of await page.locator(".figures .fold > summary").all()) await fold.tap();
  const workings = await page.locator(".working").all();
  const names = [];
  for (const working of workings) {
    const summary = working.locator("summary");
    names.push(await summary.innerText());
    assert.ok(await working.locator("dl").isHidden());
    await summary.tap();
    await working.locator("dl").waitFor();
    await checkWorking(working);
    // A finger needs some room.
    assert.ok((await summary.boundingBox()).height >= 24, `${names.at(-1)} is too low to be tapped`);
    await summary.tap();
    await working.locator("dl").waitFor({ state: "hidden" });
  }
  for (const name of WORKINGS) assert.ok(names.includes(name), `${name} is nowhere`);
  for (const name of names) assert.match(name, /^How .* (is|are) (worked out|judged)$/);
});

test("each figure's working opens by keyboard", async (t) => {
  const screen = await open(t, "floating_boards");
  const { page } = screen;
  await page.locator(".print-button").focus();
  await page.locator("#result-heading").focus();
  const names = [];
  for (let stop = 0; stop < 120; stop += 1) {
    await page.keyboard.press("Tab");
    const summary = page.locator(".figures summary:focus");
    if ((await summary.count()) === 0) continue;
    // Round the page and back at the first: it would be closed again.
    const again = await summary.evaluate((at) => at.dataset.reached ?? ((at.dataset.reached = "yes"), ""));
    if (again) break;
    const name = await summary.innerText();
    names.push(name);
    await page.keyboard.press(stop % 2 ? "Enter" : "Space");
    // What a fold holds comes when it is opened.
    await page.locator("details[open]:has(> summary:focus) > :not(summary)").first().waitFor();
    await page.locator(".waiting").waitFor({ state: "detached" });
    const working = page.locator(".working:has(> summary:focus)");
    if ((await working.count()) === 0) continue;
    await working.locator("dl").waitFor();
    await checkWorking(working);
  }
  const found = distinct(names.filter((name) => name.startsWith("How ")));
  for (const name of WORKINGS) assert.ok(found.includes(name), `${name} is not reached`);
});

test("each finding with a figure opens to its working", async (t) => {
  for (const example of EXAMPLES) {
    const screen = await open(t, example);
    await screen.resultText();
    const items = await screen.page.locator(".findings li").all();
    assert.ok(items.length > 5);
    for (const item of items) {
      const text = plain(await item.locator("span").first().textContent());
      const working = item.locator(".working");
      assert.equal(await working.count(), NO_WORKING.test(text) ? 0 : 1, text);
    }
  }
});

test("a working that was opened never stands open for another finding", async (t) => {
  const screen = await Screen.open(t, { viewport: DESKTOP, context: { locale: "en-GB" } });
  await screen.openExample("bucket");
  await screen.settled();
  const workings = screen.page.locator(".findings .finding.care details.working");
  const before = await workings.locator("summary").allInnerTexts();
  const last = workings.last();
  const name = await last.locator("summary").innerText();
  await last.locator("summary").click();
  // A graver finding comes before it.
  await screen.enter({ "fertilizer.target_ec_ms_per_cm": "4" });
  const after = await workings.locator("summary").allInnerTexts();
  assert.notDeepEqual(after, before, "no other finding came");
  const open = await screen.page.locator(".findings details.working[open] > summary").allInnerTexts();
  assert.deepEqual(open.filter((text) => text !== name), []);
});

test("a working follows its figure and the units", async (t) => {
  const screen = await open(t, "bucket");
  const fill = screen.page.locator(".working", { hasText: "How the fill" });
  await fill.locator("summary").click();
  const before = await checkWorking(fill);
  const deep = (await screen.figures()).fill;
  await screen.enter({ "container.pot_immersion_cm": "3.5" });
  assert.notEqual((await screen.figures()).fill, deep);
  const after = await checkWorking(fill);
  assert.notEqual(after, before);
  assert.match(after, /\b3\.5 cm deep/);
  await screen.chooseUnits("us");
  assert.match(await checkWorking(fill), / in deep/);
  assert.ok(await fill.locator("dl").isVisible(), "it closes when figures change");
});

// Prices

/** What the line under the dose says of money: all, and each head. */
async function cost(screen, sign) {
  const text = plain(await screen.page.locator("#figure-dose + .meaning").innerText());
  const found = /It costs about (\D+)([\d.]+), (\D+)([\d.]+) a head/.exec(text);
  if (!found) return null;
  assert.deepEqual([found[1], found[3]], [sign, sign], text);
  return { charge: Number(found[2]), head: Number(found[4]) };
}

test("prices make a line of cost in the grower's own money", async (t) => {
  const screen = await open(t, "covered_tank");
  assert.equal(await cost(screen), null);
  const prices = { calcium_nitrate: 1.8, blend: 6.25, magnesium_sulfate: 0.9 };
  await screen.enter({
    ...Object.fromEntries(Object.entries(prices).map(([name, price]) => [`fertilizer.${name}_price_per_kg`, String(price)])),
    "fertilizer.currency": "€",
  });
  const litres = [...(await doses(screen)).values()].map((amount) => Number.parseFloat(amount));
  const want = litres[0] * 0.12 * prices.calcium_nitrate + litres[1] * (0.12 * prices.blend + 0.072 * prices.magnesium_sulfate);
  const found = await cost(screen, "€");
  // Litres are shown to a tenth of about two.
  assert.ok(Math.abs(found.charge / want - 1) < 0.03, `${found.charge} for ${want}`);
  assert.ok(Math.abs((found.head * 48) / found.charge - 1) < 0.03, `${found.head} a head`);

  await screen.enter({ "fertilizer.currency": "kr " });
  assert.deepEqual(await cost(screen, "kr "), found);
  await screen.reload();
  assert.deepEqual(await cost(screen, "kr "), found);
  for (const name of Object.keys(prices)) await screen.enter({ [`fertilizer.${name}_price_per_kg`]: "" });
  assert.equal(await cost(screen), null);
});

test("salts and acid have prices of their own", async (t) => {
  const screen = await open(t, "floating_boards", { ...HARD, "fertilizer.dosing": "salts", "fertilizer.acid": "nitric" });
  await screen.enter({ "fertilizer.salts[1].price_per_kg": "2", "fertilizer.currency": "$" });
  const salt = await cost(screen, "$");
  const grams = Number.parseFloat((await doses(screen)).get("Potassium nitrate"));
  // Whole grams and cents.
  assert.ok(Math.abs(salt.charge - (2 * grams) / 1000) < 0.01, `${salt.charge} for ${grams} g`);
  await screen.enter({ "fertilizer.acid_price_per_kg": "5" });
  const acid = Number.parseFloat((await doses(screen)).get("Nitric acid"));
  const density = Number(await screen.field("fertilizer.acid_density_g_per_ml").inputValue());
  const both = await cost(screen, "$");
  const kilograms = (both.charge - salt.charge) / 5;
  assert.ok(Math.abs(kilograms / ((acid / 1000) * density) - 1) < 0.1, `${kilograms} kg for ${acid} mL`);
});

// Tables

for (const example of EXAMPLES) {
  test(`${example}: EC and pH day by day, elements at both ends, species`, async (t) => {
    const screen = await open(t, example);
    const season = await screen.table("Day by day");
    const days = season.rows.map((row) => Number(row[0]));
    const events = await screen.events();
    assert.equal(days[0], 0);
    assert.equal(days.at(-1), Math.max(...events.map((event) => event.day)), "the last day is not in it");
    days.forEach((day, index) => assert.equal(day, index));
    for (const row of season.rows) {
      const [ec, ph] = [row[season.heads.indexOf("EC")], row[season.heads.indexOf("pH")]];
      assert.match(ec, /^[\d.]+ mS\/cm$/);
      assert.ok(Number.parseFloat(ec) > 0.2 && Number.parseFloat(ec) < 15, ec);
      assert.match(ph, /^\d+(\.\d)?$/);
      assert.ok(Number(ph) > 3 && Number(ph) < 10, ph);
    }
    const levels = season.rows.map((row) => Number.parseFloat(row[1]));
    assert.deepEqual(levels, levels.toSorted((a, b) => b - a), "the level rises");

    const elements = await screen.table("What is in the solution");
    assert.deepEqual(elements.heads, ["Element", "At planting", "At the end"]);
    assert.equal(elements.rows.map(([symbol]) => symbol).join(" "), "N P K Ca Mg S Fe Mn Zn Cu B Mo Na Cl");
    for (const [symbol, start, end] of elements.rows) {
      assert.match(start, /^[\d.]+ mg\/L$/, symbol);
      assert.match(end, /^[\d.]+ mg\/L$/, symbol);
      // The blend without calcium leaves none in rain, and that is said.
      if (Number.parseFloat(start) > 0) continue;
      // Rain brings no sodium and no chloride, and no blend here does.
      if (["Na", "Cl"].includes(symbol)) continue;
      assert.equal(symbol, "Ca", start);
      assert.equal((await saying(screen, /Too little calcium/)).length, 1);
    }
    // What the line under the dose says of nitrogen is the table's.
    const more = plain(await screen.page.locator("#figure-dose + .meaning").innerText());
    assert.ok(more.includes(`${elements.rows[0][1]} nitrogen`), more);
    assert.ok(more.includes(`${season.rows[0][season.heads.indexOf("EC")]} at 25 °C`), more);
    assert.ok(more.includes(`pH ${season.rows[0][season.heads.indexOf("pH")]}`), more);

    const species = await screen.table("Ions and what they pair to");
    const names = species.rows.map(([name]) => name);
    for (const ion of ["NO3-", "K+", "Mg+2", "SO4-2", "H2PO4-", "H+", "MgSO4"]) assert.ok(names.includes(ion), ion);
    assert.equal(new Set(names).size, names.length);
    const amounts = species.rows.map(([, amount]) => Number(amount));
    assert.ok(amounts.every((amount) => amount > 0));
    assert.deepEqual(amounts, amounts.toSorted((a, b) => b - a), "the most plentiful does not come first");
    // 62.0 g a mole of nitrate, of which 14.0 are nitrogen; pairs and ammonium hold the rest.
    const nitrate = Number(species.rows.find(([name]) => name === "NO3-")[1]) * 14.007;
    assert.ok(nitrate > 0.4 * Number.parseFloat(elements.rows[0][1]) && nitrate < 1.02 * Number.parseFloat(elements.rows[0][1]));
    assert.doesNotMatch(await screen.resultText(), NO_FIGURE);
  });
}
