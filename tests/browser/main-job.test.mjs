// The main job, by touch on a tablet: from the four forms to a printed card, for each of the four
// ways of standing plants over still solution.

import assert from "node:assert/strict";
import test from "node:test";
import { dense } from "./print.mjs";
import { TABLET } from "./rig.mjs";
import { EXAMPLES, idOf, plain, Screen, STEPS, stepOf, STORE } from "./screen.mjs";
import { levelAtPlanting, SYSTEMS } from "./systems.mjs";

// Geometry in the drawing is exact up to the last bits of its arithmetic.
const DRAWN_MM = 0.001;
// What rounding to a tenth of a centimetre may hide.
const SHOWN_CM = 0.051;

const PAPERS = { A4: [210, 297], Letter: [215.9, 279.4] };
const tablet = { viewport: TABLET, touch: true, context: { locale: "en-GB" } };

const close = (got, want, tolerance, what) =>
  assert.ok(Math.abs(got - want) <= tolerance, `${what}: ${got} for ${want}`);

for (const key of EXAMPLES) {
  const entries = SYSTEMS[key];
  const name = `A plan of ours (${key})`;

  test(`${key}: four forms by touch, result, drawing, card and reload`, async (t) => {
    const screen = await Screen.open(t, tablet);
    await screen.page.locator("button.example").nth(EXAMPLES.indexOf(key)).tap();
    await fillIn(screen, name, entries, { byTouch: true });
    const figures = await screen.figures();

    checkFigures(figures, entries);
    const atAGlance = plain(await screen.page.locator(".glance-text").textContent());
    assert.equal(atAGlance, `${figures.fill} · ${figures.dose} · Harvest: ${figures.harvest}`);
    await checkDoses(screen, figures, entries);
    await checkSeason(screen, figures, key);
    await checkDrawing(screen, figures, entries, key);
    await checkPipes(screen, key, entries);
    await checkCard(screen, figures, name);
    await checkReload(screen, figures, name);

    // The same entries, pasted into a plan that began as another method, are the same plan.
    const own = await Screen.open(t, tablet);
    await own.button("Start from what I have").tap();
    await fillIn(own, name, entries, { byTouch: false });
    assert.deepEqual(await own.figures(), figures);
    assert.deepEqual(await own.cardLines(), await screen.cardLines());
  });
}

/** Names the plan and fills every form, field by field in the order of the page. */
async function fillIn(screen, name, entries, { byTouch }) {
  await screen.planName.fill(name);
  const met = [];
  const opened = new Set();
  for (const step of STEPS) {
    await screen.stepButton(step).tap();
    // Choices make fields come and go, so the next one is looked for after each entry.
    for (const path of Object.keys(entries).filter((path) => stepOf(path) === step)) {
      const { list, enter } = entries[path];
      const field = screen.field(path);
      const line = Number(/\.salts\[(\d+)\]/.exec(path)?.[1] ?? 0);
      if (line > 0 && line >= (await screen.shelf.count())) await screen.button("Add a line").tap();
      if (await screen.unfold(path, { touch: true })) opened.add(step);
      await field.waitFor({ timeout: 2000 });
      if (list) await field.selectOption(enter);
      else if (byTouch) await screen.type(path, enter, { touch: true });
      else await field.fill(enter);
      met.push(idOf(path));
    }
  }
  await screen.stepButton("container").tap();
  const values = await screen.values();
  for (const [path, { shown }] of Object.entries(entries)) assert.equal(values[idOf(path)], shown, path);
  const others = Object.keys(values).filter((id) => !met.includes(id) && !id.startsWith("fertilizer-label"));
  assert.deepEqual(others, [], "fields that nobody filled in");
  assert.ok(opened.has("fertilizer"), "nothing was folded, so no summary was tapped");
  assert.equal(await screen.summary.count(), 0, "there are problems");
}

function checkFigures({ fill, dose, harvest, left }, entries) {
  assert.match(fill, /^\d+(\.\d)? cm below the rim$/);
  const salts = entries["fertilizer.dosing"].enter === "salts";
  assert.match(dose, salts ? /^\d+ salts$/ : /^[\d.]+ (k?g|m?L) /);
  assert.match(harvest, /^\d{1,2} [A-Z][a-z]{2} 2027$/);
  assert.match(left, /^[\d.]+ m?L$/);
}

/** The three numbers on the bag: of the list, or of the label that was copied. */
function gradeOf(entries) {
  const { enter } = entries["fertilizer.blend"];
  const copied = ["nitrogen_pct", "p2o5_pct", "k2o_pct"].map((line) => entries[`fertilizer.label.${line}`]?.shown);
  // With hyphens at which no line ends.
  return (enter === "own" ? copied.join("-") : enter).replaceAll("-", "\u2011");
}

/** The table has every dose: those of the headline, or as many salts as it counts, each from the
 *  shelf and each on the card. */
async function checkDoses(screen, { dose }, entries) {
  const { rows } = await screen.table("Every dose, for one container");
  const card = (await screen.cardLines()).join("\n").toLowerCase();
  for (const [what, amount] of rows) {
    assert.match(amount, /^[\d.]+ (mg|g|kg|mL|L)$/, what);
    assert.ok(Number.parseFloat(amount) > 0, `${what}: ${amount}`);
    const named = [`${amount} of ${what}`, `${amount} ${what}`].map((text) => text.toLowerCase());
    if (what.endsWith(" fertilizer")) assert.equal(what, `${gradeOf(entries)} fertilizer`);
    assert.ok(named.some((text) => card.includes(text)), `the card lacks ${named[0]}`);
  }
  if (entries["fertilizer.dosing"].enter !== "salts") {
    assert.equal(rows.map(([what, amount]) => `${amount} of ${what}`).join(" + ").toLowerCase(), dose.toLowerCase());
    return;
  }
  assert.equal(rows.length, Number.parseInt(dose));
  const names = await screen.shelf.evaluateAll((lines) =>
    lines.map((line) => line.querySelector("input[id$=own]")?.value ?? line.querySelector("select").selectedOptions[0].text),
  );
  assert.deepEqual(rows.map(([what]) => what).filter((what) => !names.includes(what)), [], "salts from nowhere");
  assert.ok(rows.some(([what]) => what === "K2SO4"), "the grower's own salt is not used");
}

async function checkSeason(screen, { harvest }, key) {
  const events = await screen.events();
  assert.equal(events[0].day, 0);
  const planted = Date.parse(`${events[0].date} UTC`);
  for (const { day, date } of events) assert.equal(Date.parse(`${date} UTC`) - planted, day * 86_400_000, date);
  const days = events.map((event) => event.day);
  assert.deepEqual(days, days.toSorted((a, b) => a - b));
  assert.ok(events.some((event) => event.date === harvest && event.day > 0), "no event on the day of harvest");
  assert.equal(events.filter((event) => /rest/.test(event.text)).length, key === "floating_boards" ? 1 : 0);
}

/** The drawing is to scale and agrees with the entries and the figures. */
async function checkDrawing(screen, { fill }, entries, key) {
  const mm = (path) => Number(entries[path].shown) * 10;
  const end = await screen.drawing();
  await screen.showDay(0);
  const start = await screen.drawing();
  const sentence = plain(await screen.page.locator("#section-sentence").innerText());
  assert.equal(start.day, 0);
  assert.ok(end.day > 20, "the slider does not start at the end of the season");

  close(start.perMm.right, start.perMm.up, 1e-6 * start.perMm.up, "pixels a millimetre, right and up");
  assert.ok(start.perMm.right > 0 && !start.perMm.skewed);

  const { halfWidths, rim } = outline(key, mm);
  for (const [height, half] of halfWidths) {
    for (const side of [-half, half]) {
      const near = ([x, y]) => Math.abs(x - side) <= DRAWN_MM && Math.abs(y - height) <= DRAWN_MM;
      assert.ok(start.wall.some(near), `no corner of the wall at ${side}, ${height}`);
    }
  }
  close(start.rim, rim, DRAWN_MM, "rim");
  const widest = Math.max(...halfWidths.map(([, half]) => half));
  close(Math.max(...start.wall.map(([x]) => x)), widest, DRAWN_MM, "half the greatest width");
  assert.ok(start.frame.left < -widest && start.frame.right > widest, "the wall leaves the picture");
  assert.ok(start.frame.bottom < 0 && start.frame.top > rim, "the wall leaves the picture");

  for (const moment of [start, end]) {
    close(moment.solution.y, 0, DRAWN_MM, "foot of the solution");
    close(moment.solution.height, moment.level, DRAWN_MM, "height of the solution");
    close(Math.min(...moment.covers.map((cover) => cover.y)), moment.underside, DRAWN_MM, "underside of the cover");
  }
  assert.ok(end.level < start.level, "the level does not fall");
  const belowRim = rim / 10 - Number(/^[\d.]+/.exec(fill)[0]);
  if (key === "floating_boards") {
    const pipe = 2 * start.pipes[0].radius;
    assert.equal(start.pipes.length, Number(entries["container.pipe_count"].shown));
    assert.ok(start.underside >= pipe, "the boards do not float at planting");
    close(end.underside, pipe, DRAWN_MM, "the boards at rest on the pipes");
    assert.ok(start.level >= start.underside && belowRim * 10 < start.level, "boards must raise the level");
  } else {
    close(start.level, levelAtPlanting(rim, entries), DRAWN_MM, "level at planting");
    close(start.underside, rim, DRAWN_MM, "the cover on the rim");
    // The pots then raise the level a little, most in a bottle's neck: by less than 1 cm.
    const raised = start.level / 10 - belowRim;
    assert.ok(raised >= -SHOWN_CM && raised < 1, `pots raise the level by ${raised} cm`);
  }
  close(Number(/solution ([\d.]+) cm/.exec(sentence)[1]), start.level / 10, SHOWN_CM, "level in words");
  await screen.showDay(end.day);
}

/** Corners of the inner wall that the entries ask for: height and half width. */
function outline(key, mm) {
  if (key === "bottle") {
    const body = mm("container.body_height_cm");
    const shoulder = body + mm("container.shoulder_height_cm");
    const rim = shoulder + mm("container.neck_height_cm");
    const [wide, narrow] = [mm("container.diameter_cm") / 2, mm("container.neck_diameter_cm") / 2];
    return { rim, halfWidths: [[0, wide], [body, wide], [shoulder, narrow], [rim, narrow]] };
  }
  const rim = mm("container.height_cm");
  const [low, high] =
    key === "bucket" ? ["container.bottom_diameter_cm", "container.top_diameter_cm"] : ["container.width_cm", "container.width_cm"];
  return { rim, halfWidths: [[0, mm(low) / 2], [rim, mm(high) / 2]] };
}

async function checkPipes(screen, key, entries) {
  const rows = await screen.pipes();
  if (key !== "floating_boards") {
    assert.deepEqual(rows, []);
    return;
  }
  const chosen = rows.filter((row) => row.chosen);
  assert.equal(chosen.length, 1, "one pipe is the chosen one");
  const word = await screen.field("container.pipe").evaluate((list) => list.selectedOptions[0].text);
  assert.equal(entries["container.pipe"].enter, "inch_4");
  assert.ok(chosen[0].cells[0].startsWith(word) && chosen[0].cells[0] !== word, `'${chosen[0].cells[0]}' marks '${word}'`);
  // ASTM D1785: 4 in has 4.5 in outside.
  assert.equal(chosen[0].cells.at(-1), "114 mm");
  assert.ok(rows.length >= 10 && rows.every((row) => row.cells[1] !== ""), "a verdict for each pipe");
}

async function checkCard(screen, figures, name) {
  const lines = await screen.cardLines();
  const card = lines.join("\n");
  assert.ok(lines.includes(name), "the plan's name");
  assert.ok(lines.includes(figures.fill), "the fill mark");
  const { day: lastDay } = (await screen.events()).at(-1);
  assert.ok(lines.some((line) => line.endsWith(`${figures.harvest} (day ${lastDay})`)), "the date of harvest");
  assert.ok(card.includes(`${figures.left} of solution left`), "what is left");
  for (const [amount] of figures.dose.matchAll(/[\d.]+ (k?g|m?L)\b/g)) assert.ok(card.includes(`${amount} of `), amount);
  for (const { date } of (await screen.events()).filter((event) => event.day === 0)) {
    assert.ok(lines.some((line) => line.endsWith(`${date} (day 0)`)), date);
  }
  assert.match(card, /may only fall/);
  assert.match(card, /Take care\n.*\n/);
  assert.match(card, /out of reach of children/);

  for (const [format, [width, height]] of Object.entries(PAPERS)) {
    const paper = await screen.printCard(format);
    assert.equal(paper.pages.length, 1, `${format}: pages`);
    close(paper.size.width, (width * 72) / 25.4, 1, format);
    close(paper.size.height, (height * 72) / 25.4, 1, format);
    const printed = dense(paper.text);
    for (const line of lines) assert.ok(printed.includes(dense(line)), `${format} lacks '${line}'`);
    // Nothing of the page but the card.
    assert.doesNotMatch(paper.text, /Name of this plan|Print the card/);
  }
}

async function checkReload(screen, figures, name) {
  const [before, values, lines] = [await screen.stored(STORE), await screen.values(), await screen.cardLines()];
  await screen.reload();
  assert.equal(await screen.planName.inputValue(), name);
  assert.deepEqual(await screen.values(), values);
  assert.deepEqual(await screen.figures(), figures);
  assert.deepEqual(await screen.cardLines(), lines);
  assert.equal(await screen.stored(STORE), before);
}
