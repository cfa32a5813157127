// Every field of every system, given what no grower should enter: a clear message beside it, nothing
// lost, and the rest of the page alive.

import assert from "node:assert/strict";
import test from "node:test";
import { TABLET } from "./rig.mjs";
import { EXAMPLES, idOf, plain, Screen, STEPS, stepOf } from "./screen.mjs";

const NONSENSE = ["", "a word", "-5", "0", "1e300", "1e-300", "NaN", "1e309", "1,234", "12 parsecs"];
// These are no value of any field. (Whether the others are depends on the field.)
const NEVER = ["a word", "1e300", "NaN", "1e309", "1,234", "12 parsecs"];
// What may be left empty.
const OPTIONAL = /^(fertilizer-label-|fertilizer-water-(?!ph)|container-fill_depth)|-purity_pct$|price_per_kg$/;
// What may lie below zero.
const SIGNED = ["climate-latitude_deg", "climate-elevation_m", "climate-temperature_min_c"];
// What is longer than this, nobody reads beside a field.
const LONGEST_MESSAGE = 220;

// Choices that bring out the fields which the four examples leave unused.
const VARIANTS = {
  bottle: [
    ["container.shape", "cylinder"],
    ["fertilizer.water_kind", "tap"],
    ["fertilizer.acid", "citric"],
    ["climate.shelter", "lamps"],
  ],
  bucket: [
    ["container.shape", "tapered_rectangular"],
    ["fertilizer.water_kind", "analysis"],
    ["fertilizer.acid", "phosphoric"],
    ["climate.daylight_by", "sunshine"],
  ],
  covered_tank: [["fertilizer.strength_by", "nitrogen"], ["fertilizer.acid", "sulfuric"], ["container.shape", "measured"]],
  floating_boards: [["container.pipe", "own"], ["fertilizer.blend", "own"], ["fertilizer.dosing", "salts"]],
};

const metric = { viewport: TABLET, context: { locale: "en-GB" } };

for (const key of EXAMPLES) {
  test(`${key}: nonsense in every field`, async (t) => {
    const screen = await Screen.open(t, metric);
    await screen.openExample(key);
    const met = await tryAll(screen);
    for (const [path, choice] of VARIANTS[key]) {
      await screen.goTo(stepOf(path));
      await screen.field(path).selectOption(choice);
    }
    if (key === "covered_tank") await measure(screen);
    await tryAll(screen, met);
    assert.equal(await screen.overflows(), false);
  });

  test(`${key}: wrong words outlive a reload and are mended one by one`, async (t) => {
    const screen = await Screen.open(t, metric);
    await screen.openExample(key);
    const [figures, good] = [await screen.figures(), await screen.values()];
    const boxes = (await screen.fields()).filter((field) => !field.list && !field.anyText).map((field) => field.id);
    await enter(screen, Object.fromEntries(boxes.map((id) => [id, "a word"])));
    await screen.reload();
    const values = await screen.values();
    for (const id of boxes) {
      assert.equal(values[id], "a word", id);
      assert.match(await screen.page.locator(`#${id}-problem`).innerText({ timeout: 1000 }).catch(() => ""), /./, id);
    }
    assert.equal(await screen.summary.locator("a").count(), boxes.length);
    assert.ok(await screen.printButton.isDisabled());
    for (const step of STEPS) assert.match(await screen.stepButton(step).innerText(), /\d+ entr/);

    await enter(screen, Object.fromEntries(boxes.map((id) => [id, good[id]])));
    assert.equal(await screen.summary.count(), 0);
    assert.ok(await screen.printButton.isEnabled());
    assert.deepEqual(await screen.figures(), figures);
  });
}

test("a slip while typing: the message, the summary's link, and the rest of the page", async (t) => {
  const screen = await Screen.open(t, metric);
  await screen.openExample("bucket");
  const figures = await screen.figures();

  await screen.type("container.height_cm", "3o cm");
  await screen.page.keyboard.press("Tab");
  const height = screen.field("container.height_cm");
  assert.equal(await height.inputValue(), "3o cm");
  assert.match(plain(await screen.problem("container.height_cm").innerText()), /3o cm/);
  assert.equal(await height.getAttribute("aria-invalid"), "true");
  assert.ok((await height.getAttribute("aria-describedby")).split(" ").includes("container-height_cm-problem"));
  assert.ok(await screen.printButton.isDisabled());
  assert.deepEqual(await screen.figures(), figures, "the figures of before stand, marked as such");
  assert.match(await screen.page.locator(".card").textContent(), /no card until/);

  // The rest is alive: other fields, units, steps, the drawing.
  await screen.type("container.cover_thickness_cm", "-1");
  await screen.chooseUnits("us");
  assert.equal(await height.inputValue(), "3o cm");
  assert.match(plain(await screen.problem("container.cover_thickness_cm").innerText()), / in\b/);
  await screen.chooseUnits("metric");
  await screen.showDay(3);
  await screen.goTo("climate");
  await screen.type("climate.humidity_pct", "much");
  await screen.goTo("crop");
  await screen.type("crop.target_head_g", "210");
  assert.equal(await screen.problem("crop.target_head_g").innerText(), "");
  assert.equal(await screen.summary.locator("a").count(), 3);

  // A link leads to the field, into another step too.
  for (const path of ["climate.humidity_pct", "container.cover_thickness_cm", "container.height_cm"]) {
    await screen.summaryLink(path).click();
    await screen.focusMoves(idOf(path));
    assert.ok(await screen.field(path).isVisible());
    assert.equal(await screen.stepButton(stepOf(path)).getAttribute("aria-current"), "step");
  }
  await screen.type("container.height_cm", "35");
  await screen.type("container.cover_thickness_cm", "0,3");
  await screen.goTo("climate");
  await screen.type("climate.humidity_pct", "80");
  await screen.goTo("crop");
  await screen.type("crop.target_head_g", "200");
  assert.equal(await screen.summary.count(), 0);
  assert.ok(await screen.printButton.isEnabled());
  assert.deepEqual(await screen.figures(), figures);
});

test("a link leads into the folded label of the blend", async (t) => {
  const screen = await Screen.open(t, metric);
  await screen.openExample("bottle");
  await screen.goTo("fertilizer");
  await screen.page.locator("#fertilizer-label-k2o_pct").evaluate((box) => {
    box.value = "lots";
    box.dispatchEvent(new Event("input", { bubbles: true }));
  });
  await screen.goTo("container");
  await screen.summaryLink("fertilizer.label.k2o_pct").click();
  await screen.focusMoves("fertilizer-label-k2o_pct");
  assert.ok(await screen.field("fertilizer.label.k2o_pct").isVisible());
});

test("a link leads into the folded prices", async (t) => {
  const screen = await Screen.open(t, metric);
  await screen.openExample("bottle");
  await screen.enter({ "fertilizer.blend_price_per_kg": "dear" });
  await screen.page.locator(".forms details", { has: screen.field("fertilizer.blend_price_per_kg") }).locator("summary").click();
  await screen.field("fertilizer.blend_price_per_kg").waitFor({ state: "hidden" });
  await screen.goTo("container");
  await screen.summaryLink("fertilizer.blend_price_per_kg").click();
  await screen.focusMoves("fertilizer-blend_price_per_kg");
  assert.ok(await screen.field("fertilizer.blend_price_per_kg").isVisible());
});

test("a salt that is neither on the list nor a formula", async (t) => {
  const screen = await Screen.open(t, metric);
  await screen.openExample("bucket");
  await screen.enter({ "fertilizer.dosing": "salts" });
  const figures = await screen.figures();
  const line = "fertilizer.salts[12].salt";
  for (const wrong of ["Epsom", "KNO", "K2SO4)", "(((", "<b>", "Xx2", "🧂", "K0", "K99999999999999999999", "."]) {
    await screen.enter({ [`${line}-own`]: wrong });
    // What is read as a formula must then count as one; what is not is named.
    const links = await screen.summary.locator("a").count();
    const message = plain(await screen.problem(line).innerText());
    assert.equal(links, message === "" ? 0 : 1, wrong);
    if (message !== "") assert.ok(message.startsWith(`'${wrong}' is neither`), message);
    if (wrong !== "KNO") assert.notEqual(message, "", wrong);
    assert.doesNotMatch(await screen.resultText(), /NaN|Infinity|undefined/, wrong);
    const box = screen.field(`${line}-own`);
    assert.equal(await box.inputValue(), wrong);
    assert.equal(await box.getAttribute("aria-invalid"), message === "" ? null : "true", "the box of the formula is not marked");
    const described = (await box.getAttribute("aria-describedby")) ?? "";
    assert.ok(described.includes(`${idOf(line)}-problem`), "the box is not described by its problem");
  }
  await screen.goTo("container");
  await screen.summaryLink(line).click();
  await screen.focusMoves(`${idOf(line)}-own`);
  // Each way out: a formula, a salt from the list, no line at all.
  await screen.enter({ [`${line}-own`]: "K2SO4" });
  assert.equal(await screen.summary.count(), 0);
  await screen.enter({ [`${line}-own`]: "Epsom", [line]: "magnesium_sulfate_heptahydrate" });
  assert.equal(await screen.summary.count(), 0);
  await screen.shortenShelf(12);
  assert.deepEqual(await screen.figures(), figures);
});

test("an empty shelf says so, and an added salt mends it", async (t) => {
  const screen = await Screen.open(t, metric);
  await screen.openExample("bucket");
  await screen.enter({ "fertilizer.dosing": "salts" });
  await screen.shortenShelf(0);
  assert.ok(await screen.printButton.isDisabled());
  assert.match(await screen.summaryLink("fertilizer.salts").innerText(), /at least one salt/);
  assert.match(await screen.field("fertilizer.salts").innerText(), /at least one salt/);
  await screen.goTo("container");
  await screen.summaryLink("fertilizer.salts").click();
  await screen.focusMoves("fertilizer-salts");
  await screen.button("Add a line").click();
  await screen.focusMoves("fertilizer-salts-0--salt");
  await screen.enter({ "fertilizer.salts[0].salt": "potassium_nitrate" });
  assert.equal(await screen.summary.count(), 0);
});

test("a label whose forms of nitrogen do not make up the total names both figures", async (t) => {
  const screen = await Screen.open(t, metric);
  await screen.openExample("bottle");
  await screen.enter({
    "fertilizer.blend": "own",
    "fertilizer.label.nitrogen_pct": "12",
    "fertilizer.label.nitrate_n_pct": "7.5",
    "fertilizer.label.ammonium_n_pct": "2.25",
    "fertilizer.label.urea_n_pct": "0",
  });
  const total = screen.problem("fertilizer.label.nitrogen_pct");
  assert.match(plain(await total.innerText()), /\b12\b ?%.*\b9\.75 ?%/);
  assert.ok(await screen.printButton.isDisabled());
  assert.equal(await screen.summary.locator("a").count(), 1);
  await screen.enter({ "fertilizer.label.urea_n_pct": "2,25" });
  assert.equal(await total.innerText(), "");
  assert.equal(await screen.summary.count(), 0);
});

test("choices at odds with each other say so and can be taken back", async (t) => {
  const screen = await Screen.open(t, metric);
  await screen.openExample("floating_boards");
  const figures = await screen.figures();
  await screen.field("container.shape").selectOption("tapered_round");
  assert.match(await screen.problem("container.shape").innerText(), /straight walls/);
  assert.ok(await screen.printButton.isDisabled());
  await screen.field("container.shape").selectOption("rectangular");
  assert.deepEqual(await screen.figures(), figures);
});

/** Fills the lines of a vessel measured with a jug. */
async function measure(screen) {
  const lines = [[60, 3], [120, 6], [200, 10]];
  for (const [index, [volume, depth]] of lines.entries()) {
    if (index >= (await screen.page.locator(".pair").count())) await screen.button("Add a line").click();
    await screen.field(`container.measured[${index}].volume_l`).fill(String(volume));
    await screen.field(`container.measured[${index}].depth_cm`).fill(String(depth));
  }
  await screen.goTo("crop");
  await screen.field("crop.plants_per_container").fill("40");
  assert.deepEqual(await screen.summary.allInnerTexts(), []);
}

/** Enters texts (id to text) as a paste would, and leaves each field. */
async function enter(screen, texts) {
  await screen.page.evaluate(async (all) => {
    for (const [id, text] of Object.entries(all)) {
      const box = document.getElementById(id);
      box.value = text;
      box.dispatchEvent(new Event("input", { bubbles: true }));
      box.dispatchEvent(new Event("blur"));
    }
    await new Promise(requestAnimationFrame);
  }, texts);
}

/** Tries every text in every field that is not in `skip`; returns the ids met. The page is driven
 *  from inside, some thousand entries would else take minutes. */
async function tryAll(screen, skip = []) {
  const { met, faults } = await screen.page.evaluate(inPage, { NONSENSE, skip, LONGEST_MESSAGE });
  const wrong = faults.map(({ id, text, fault }) => `${id} '${text}': ${fault}`);
  for (const { id, text, own } of met) {
    if (own) continue;
    const may = (text === "" && OPTIONAL.test(id)) || (text === "-5" && SIGNED.includes(id)) || Math.abs(text) < 1e-9;
    if (!may || NEVER.includes(text)) wrong.push(`${id} '${text}': no message`);
  }
  assert.deepEqual(wrong, []);
  assert.equal(await screen.summary.count(), 0);
  return [...skip, ...new Set(met.map(({ id }) => id))];
}

/** Runs in the page. */
async function inPage({ NONSENSE: texts, skip, LONGEST_MESSAGE: longest }) {
  const met = [];
  const faults = [];
  const controls = () => [...document.querySelectorAll(".forms :is(input, select)[name]")];
  const ids = () => controls().map((control) => control.id).join();
  // The page redraws in a microtask.
  const settle = () => new Promise((done) => setTimeout(done));
  const result = () => document.querySelector(".figures").textContent + document.querySelector(".card").textContent;
  const headline = () => document.querySelector(".headline").textContent;
  const all = ids();
  for (const { id } of controls().filter((control) => control.localName === "input" && !skip.includes(control.id))) {
    const box = () => document.getElementById(id);
    const before = box().value;
    const figures = headline();
    const write = async (text) => {
      box().value = text;
      box().dispatchEvent(new Event("input", { bubbles: true }));
      box().dispatchEvent(new Event("blur"));
      await settle();
    };
    for (const text of texts) {
      await write(text);
      const note = (fault) => faults.push({ id, text, fault });
      if (ids() !== all) note("fields came or went");
      if (!box()) continue;
      const message = document.getElementById(`${id}-problem`).querySelector(".bad")?.textContent ?? "";
      const links = [...document.querySelectorAll(".summary a")].map((link) => link.getAttribute("href").slice(1));
      const printable = !document.querySelector(".print-button").disabled;
      const taken = /is taken, as is usual/.test(document.getElementById(`${id}-problem`).textContent);
      if (taken && text !== "") note("a value stands in for what was entered");
      met.push({ id, text, own: message !== "" || taken });
      if (/NaN|Infinity|\binf\b|undefined/.test(result())) note(`no figure: ${/.{20}(NaN|inf|undefined).{9}/i.exec(result())?.[0]}`);
      if (printable !== (links.length === 0)) note("the print button is at odds with the summary");
      if ((message !== "") !== links.includes(id)) note("the summary is at odds with the field");
      if (message !== "" && box().value !== text) note(`shows '${box().value}'`);
      if (message.length > longest) note(`a message of ${message.length} letters: ${message.slice(0, 60)}…`);
      for (const link of links) {
        const at = document.getElementById(`${link}-problem`) ?? document.getElementById(link);
        if (!at?.textContent.trim()) note(`the summary links to ${link}, where nothing stands`);
      }
    }
    await write(before);
    if (box()?.value !== before) faults.push({ id, text: before, fault: `mended, it shows '${box()?.value}'` });
    if (headline() !== figures) faults.push({ id, text: before, fault: "mended, the figures are others" });
  }
  return { met, faults };
}
