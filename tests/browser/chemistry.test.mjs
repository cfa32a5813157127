// Water, acid, salts and stocks: what is measured out, in what order, and what is warned of.

import assert from "node:assert/strict";
import test from "node:test";
import { doses, HARD, open, saying } from "./chemistry.mjs";
import { EXAMPLES, plain } from "./screen.mjs";

// Water

test("a hard water brings cautions, rain and a soft one do not", async (t) => {
  const screen = await open(t, "bucket");
  const aboutWater = /\bin your water\b|^Mixed with rain|analysis does not agree/;
  assert.deepEqual(await saying(screen, aboutWater), [], "rain");

  await screen.enter(HARD);
  const [alkalinity] = await saying(screen, /^Alkalinity/);
  assert.match(alkalinity, /\b2\d\d mg\/L CaCO3 in your water; up to \d+ mg\/L/);
  // 2.5 mg of CaCO3 for each of calcium, 4.1 for each of magnesium: 299 mg/L.
  assert.match((await saying(screen, /^Hardness/))[0] ?? "none", /\b(299|300) mg\/L CaCO3 in your water/);
  const [share] = await saying(screen, /^Mixed with rain/);
  const percent = Number(/(\d+) ?% of your water/.exec(share)[1]);
  // 75 mg/L of alkalinity at most, and nothing but this and the hardness (150) is over its limit.
  assert.equal(percent, Math.round((100 * 75) / 215));
  assert.deepEqual(await saying(screen, /does not agree/), []);

  // So diluted, it is within every limit.
  const diluted = Object.entries(HARD).slice(1).filter(([path]) => !path.endsWith(".ph"));
  await screen.enter(Object.fromEntries(diluted.map(([path, text]) => [path, String((Number(text) * 34) / 100)])));
  assert.deepEqual(await saying(screen, aboutWater), []);
  await screen.enter({ "fertilizer.water_kind": "rain" });
  assert.deepEqual(await saying(screen, aboutWater), []);
});

test("an analysis at odds with itself is called so", async (t) => {
  const screen = await open(t, "bucket", HARD);
  await screen.enter({ "fertilizer.water.ca_mg_per_l": "9" });
  assert.match((await saying(screen, /does not agree with itself/))[0] ?? "none", /Cations and anions differ by \d+ ?%/);
  await screen.enter({ "fertilizer.water.ca_mg_per_l": "90", "fertilizer.raw_water_ec_ms_per_cm": "0.2" });
  assert.match((await saying(screen, /does not agree with itself/))[0] ?? "none", /The EC measured is \d+ ?%/);
});

// Acid

for (const [acid, amount, name] of [
  ["nitric", /^[\d.]+ mL$/, "Nitric acid"],
  ["phosphoric", /^[\d.]+ mL$/, "Phosphoric acid"],
  ["sulfuric", /^[\d.]+ mL$/, "Sulfuric acid"],
  ["citric", /^[\d.]+ g$/, "Citric acid (powder)"],
]) {
  test(`${acid} acid: dose, pH, and how to handle it on the card`, async (t) => {
    const screen = await open(t, "bucket", { ...HARD, "fertilizer.acid": acid, "fertilizer.target_ph": "5.8" });
    const list = await doses(screen);
    assert.match(list.get(name) ?? "none", amount);
    assert.ok(Number.parseFloat(list.get(name)) > 0);
    assert.match(await screen.page.locator("#figure-dose").innerText(), new RegExp(name.split(" ")[0], "i"));
    const { heads, rows } = await screen.table("Day by day");
    assert.equal(Number(rows[0][heads.indexOf("pH")]), 5.8);

    const card = await screen.cardLines();
    const step = card.findIndex((line) => line.includes(`${list.get(name)} of ${name.toLowerCase()}`));
    assert.ok(step > 0, "no step of the card doses the acid");
    assert.match(card[step], /[Gg]loves.*eye protection/);
    assert.match(card[step], /to pH 5\.8/);
    assert.ok(step > card.findIndex((line) => line.startsWith("Fill to the mark")), "the acid comes before the water");
    const care = card.slice(card.indexOf("Take care")).join("\n");
    assert.match(care, /[Gg]loves and eye protection/);
    assert.match(care, /acid into water, never water into acid/);
    const paper = await screen.printCard("A4");
    assert.match(plain(paper.text), /acid into water, never water into acid/);

    // Twice the strength, half the amount.
    const before = Number.parseFloat(list.get(name));
    const strength = Number(await screen.field("fertilizer.acid_pct").inputValue());
    await screen.enter({ "fertilizer.acid_pct": String(strength / 2) });
    const after = Number.parseFloat((await doses(screen)).get(name));
    // Both are shown to two digits or a tenth.
    assert.ok(Math.abs(after / before - 2) < 0.15, `${before}, then ${after}`);

    await screen.enter({ "fertilizer.acid": "none" });
    assert.deepEqual([...(await doses(screen)).keys()], ["10\u20118\u201122 fertilizer"]);
    assert.doesNotMatch((await screen.cardLines()).join("\n"), /acid/i);
  });
}

test("an acid is asked for where none is chosen, and a powder is taken for pure", async (t) => {
  const screen = await open(t, "bucket", HARD);
  await screen.goTo("fertilizer");
  const said = screen.problem("fertilizer.acid");
  const [, ph] = /^Without an acid the pH is ([\d.]+); 5\.3 to 7 suits/.exec(await said.innerText());
  assert.ok(Number(ph) > 7);
  await screen.enter({ "fertilizer.acid": "citric" });
  await said.filter({ hasText: /^$/ }).waitFor({ state: "attached" });
  assert.equal(await screen.field("fertilizer.acid_pct").inputValue(), "100");
});

test("where the solution is acid already, none is dosed and none is warned of", async (t) => {
  const screen = await open(t, "bucket", {
    "fertilizer.water_kind": "rain",
    "fertilizer.acid": "nitric",
    "fertilizer.target_ph": "7",
  });
  assert.deepEqual([...(await doses(screen)).keys()], ["10\u20118\u201122 fertilizer"]);
  assert.equal((await saying(screen, /No acid is needed: the pH is/)).length, 1);
  assert.doesNotMatch((await screen.cardLines()).join("\n"), /acid/i);
});

// Salts

const CALCIUM = /calcium|Ca\(|CaCl/i;

/** The two steps of the card that dissolve salts, as they are written. */
async function jugs(screen) {
  const card = await screen.cardLines();
  const steps = card.filter((line) => /\bjug\b/.test(line));
  const order = steps.map((line) => card.indexOf(line));
  return { steps, order };
}

for (const example of EXAMPLES) {
  test(`${example}: single salts, each dosed, calcium in a second jug`, async (t) => {
    const screen = await open(t, example, { "fertilizer.dosing": "salts" });
    const list = await doses(screen);
    assert.equal(`${list.size} salts`, (await screen.figures()).dose);
    assert.ok(list.size >= 10, [...list.keys()].join());
    for (const [salt, amount] of list) {
      assert.match(amount, /^[\d.]+ (mg|g|kg)$/, salt);
      assert.ok(Number.parseFloat(amount) > 0, `${amount} of ${salt}`);
    }
    const { steps, order } = await jugs(screen);
    assert.equal(steps.length, 2);
    assert.ok(order[0] < order[1]);
    assert.match(steps[1], /second jug, only after/);
    assert.doesNotMatch(steps[0], CALCIUM);
    assert.match(steps[1], CALCIUM);
    assert.doesNotMatch(steps[1], /sulfate|phosphate/i);
    for (const [salt, amount] of list) {
      const named = `${amount} ${salt}`.toLowerCase();
      assert.equal(steps.filter((line) => line.toLowerCase().includes(named)).length, 1, named);
    }
  });
}

test("a calcium salt by its own formula stays apart as well", async (t) => {
  const screen = await open(t, "bucket", {
    "fertilizer.dosing": "salts",
    "fertilizer.salts[0].salt": "",
    "fertilizer.salts[0].salt-own": "Ca(NO3)2.4H2O",
  });
  assert.ok((await doses(screen)).has("Ca(NO3)2.4H2O"));
  const { steps } = await jugs(screen);
  assert.doesNotMatch(steps[0], CALCIUM);
  assert.match(steps[1] ?? "none", /Ca\(NO3\)2\.4H2O/);
});

test("a shelf without calcium needs no second jug, one of calcium alone no first", async (t) => {
  const screen = await open(t, "bucket", { "fertilizer.dosing": "salts", "fertilizer.salts[0].salt": "potassium_sulfate" });
  await screen.shortenShelf(3);
  for (const salts of [
    ["potassium_sulfate", "potassium_nitrate", "monopotassium_phosphate"],
    ["calcium_nitrate_tetrahydrate", "calcium_ammonium_nitrate", "calcium_chloride_dihydrate"],
  ]) {
    await screen.enter(Object.fromEntries(salts.map((key, index) => [`fertilizer.salts[${index}].salt`, key])));
    assert.ok((await doses(screen)).size >= 2);
    const { steps } = await jugs(screen);
    assert.equal(steps.length, 1, steps.join("\n"));
    assert.doesNotMatch(steps[0], /second|after/);
    assert.doesNotMatch(steps[0], /: ?\.$/);
  }
  assert.ok((await saying(screen, /The salts on the shelf miss/)).length > 0, "what is missed is not named");
});

test("no dose reads as nothing, in either units", async (t) => {
  const screen = await open(t, "bottle", { ...HARD, "fertilizer.dosing": "salts", "fertilizer.acid": "nitric" });
  for (const units of ["metric", "us"]) {
    await screen.chooseUnits(units);
    const list = [...(await doses(screen))].map(([salt, amount]) => `${salt}: ${amount}`);
    assert.deepEqual(list.filter((line) => /: 0(\.0*)? |\(0(\.0*)? /.test(line)), []);
    assert.doesNotMatch((await screen.cardLines()).join("\n"), /\b(?<![.\d])0 (g|mg|mL|oz|gal)\b/);
  }
});

test("a less pure salt weighs more, in proportion", async (t) => {
  const screen = await open(t, "floating_boards", { "fertilizer.dosing": "salts" });
  const name = "Potassium nitrate";
  const pure = Number.parseFloat((await doses(screen)).get(name));
  await screen.enter({ "fertilizer.salts[1].purity_pct": "80" });
  const impure = Number.parseFloat((await doses(screen)).get(name));
  // Whole grams of several hundred.
  assert.ok(Math.abs((impure * 0.8) / pure - 1) < 0.005, `${pure}, then ${impure}`);
});

// Stocks

for (const example of ["covered_tank", "floating_boards"]) {
  test(`${example}: stocks, what a batch serves, and never together`, async (t) => {
    const screen = await open(t, example);
    const { heads, rows } = await screen.table("Stock solutions");
    assert.deepEqual(rows.map(([stock]) => stock), ["Stock A", "Stock B"]);
    const served = rows
      .map((row) => row[heads.indexOf("One batch serves")])
      .map((text) => /^([\d.]+) containers?, ([\d.]+) heads?$/.exec(text).slice(1).map(Number));
    const list = await doses(screen);
    const litres = [...list.values()].map((amount) => Number.parseFloat(amount));
    const volume = Number(await screen.field("fertilizer.stock_volume_l").inputValue());
    for (const [index, [containers, plants]] of served.entries()) {
      // Litres are shown to a tenth, what is served to two digits.
      const range = [volume / (litres[index] + 0.05), volume / (litres[index] - 0.05)];
      assert.ok(containers >= range[0] * 0.94 && containers <= range[1] * 1.06, `${containers} containers of ${litres[index]} L`);
      const each = example === "covered_tank" ? 48 : 144;
      assert.ok(Math.abs(plants / containers / each - 1) < 0.1, `${plants} heads in ${containers} containers`);
    }
    assert.match(rows[0][1], /^120 g\/L of calcium nitrate/);
    assert.match(rows[1][1], /120 g\/L of 8\u201115\u201136 fertilizer \+ 72 g\/L of magnesium sulfate/);
    const saturation = heads.indexOf("Saturation index");
    for (const row of rows) assert.match(row[saturation], /^(–|(gypsum|calcium phosphate|lime) [−\d].*)$/);

    const [apart] = await saying(screen, /^Never pour stock A and stock B together/);
    assert.match(apart, /(gypsum|calcium phosphate) would fall out/);
    const card = await screen.cardLines();
    assert.ok(card.includes(apart), "the card does not say it");
    const [a, b] = ["A", "B"].map((stock) =>
      card.findIndex((line) => new RegExp(`^(Only then p|P)our in .* of stock ${stock}\\b`).test(line)),
    );
    assert.ok(a > 0 && b > a);

    // Twice as much made up serves twice as many.
    await screen.enter({ "fertilizer.stock_volume_l": String(2 * volume) });
    const more = await screen.table("Stock solutions");
    const twice = Number.parseFloat(more.rows[0][heads.indexOf("One batch serves")]);
    assert.ok(Math.abs(twice / served[0][0] - 2) < 0.2, `${served[0][0]}, then ${twice}`);
  });
}

test("a stock too strong for its store does not stay clear, and says at what strength it does", async (t) => {
  const screen = await open(t, "covered_tank");
  assert.equal((await saying(screen, /^Stock [AB] stays clear/)).length, 2);
  await screen.enter({
    "fertilizer.stock_b_magnesium_sulfate_g_per_l": "500",
    "fertilizer.stock_b_blend_g_per_l": "400",
    "fertilizer.store_temperature_c": "2",
  });
  const [cloudy] = await saying(screen, /^Stock B does not stay clear/);
  assert.match(cloudy, /its salts are \d{3}% of what dissolves .* at most \d\d% of this strength/);
});

test("other ways of dosing have no table of stocks", async (t) => {
  const screen = await open(t, "bucket");
  const table = screen.page.locator(".fold > summary", { hasText: "Stock solutions" });
  assert.equal(await table.count(), 0);
  await screen.enter({ "fertilizer.dosing": "stocks" });
  assert.equal(await table.count(), 1);
  assert.deepEqual([...(await doses(screen)).keys()], ["Stock A", "Stock B"]);
  await screen.enter({ "fertilizer.dosing": "salts" });
  assert.equal(await table.count(), 0);
});
