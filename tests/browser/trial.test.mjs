// A trial of variants of a plan: laid out, labelled, recorded, read and printed; what the page says is
// held to the native command, to means taken here by hand, and to what must be refused.

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import test from "node:test";
import { metric, NO_FIGURE } from "./chemistry.mjs";
import { answer } from "./command.mjs";
import { dense, print } from "./print.mjs";
import { PHONE } from "./rig.mjs";
import { plain } from "./screen.mjs";
import { RECORDS, TABLE, TrialScreen, begun } from "./trials.mjs";
import { violations } from "./violations.mjs";

const PIPES = ["75 mm", "90 mm", "110 mm"];

/** What the native command says of a trial document. */
const solved = (json) => answer(json, "--trial");

/** The first number of a text. */
const number = (text) => Number(/-?[\d.]+/.exec(text.replaceAll("−", "-"))[0]);
const mean = (values) => values.reduce((sum, value) => sum + value, 0) / values.length;

/** Whether a figure that is shown rounded is this one: half a unit of its last digit either way. */
function sameFigure(shown, value, what) {
  const digits = /\.(\d+)/.exec(shown)?.[1].length ?? 0;
  assert.ok(Math.abs(number(shown) - value) <= 0.5 * 10 ** -digits + 1e-9, `${what}: ${shown}, not ${value}`);
}

test("three pipe sizes in four blocks, from the plan to the printed report", async (t) => {
  const screen = await begun(t);
  assert.equal(await screen.page.locator(".bench").isVisible(), false, "the plan still stands beside the trial");
  await screen.layOut();

  // Named by their values, each once in each block of the drawing.
  for (const [place, name] of PIPES.entries()) {
    assert.equal(await screen.page.locator(`#variant-name-${place + 1}`).inputValue(), name);
  }
  const bench = await screen.bench();
  assert.deepEqual(bench.map(({ number: of }) => of), RECORDS.map((_, place) => String(place + 1)));
  for (const block of ["1", "2", "3", "4"]) {
    const own = bench.filter((unit) => unit.block === `Block ${block}`);
    assert.deepEqual(own.map(({ letter }) => letter).sort(), ["A", "B", "C"]);
    for (const { letter, name } of own) assert.equal(name, PIPES["ABC".indexOf(letter)]);
  }
  assert.match(plain(await screen.trial.innerText()), /One independent unit is one container.*never replicates/);
  const expected = await screen.table("What each variant should bring");
  assert.equal(expected.rows.length, 3);

  // Labels: one for each container, one page of either paper.
  await screen.choosePaper("Labels");
  for (const format of ["A4", "Letter"]) {
    const { pages, text } = await print(screen.page, { format });
    assert.equal(pages.length, 1, `${format}: ${pages.length} pages`);
    for (const unit of bench) assert.match(text, new RegExp(`^Container ${unit.number}$`, "m"));
    for (const [place, name] of PIPES.entries()) {
      assert.equal(text.split(`${"ABC"[place]}: ${name}`).length - 1, 4, `${format}: labels of ${name}`);
    }
    assert.doesNotMatch(text, /Take in this table|Fertilizer/);
  }

  await screen.choosePaper("Layout and record sheet");
  const empty = await print(screen.page, { format: "Letter" });
  assert.equal(empty.pages.length, 1);
  assert.match(plain(empty.text), /Solution used, L/);
  assert.match(plain(empty.text), /Head 4, g/);

  // 48 heads, two of them missing.
  assert.equal(await screen.paste(TABLE), "Read 12 lines: 46 head masses, 2 missing.");
  assert.equal(await screen.page.locator(".records [placeholder=missing]").count(), 2);
  assert.equal(await screen.page.locator("#record-4-3").getAttribute("placeholder"), "missing");
  assert.equal(await screen.page.locator("#record-4-4").inputValue(), "172");
  // What belongs to a layout fixes it.
  for (const id of ["trial-seed", "trial-design", "trial-replicates", "variant-value-1"]) {
    assert.ok(await screen.page.locator(`#${id}`).isDisabled(), id);
  }

  const outcome = await solved(await screen.file());
  const [mass, water] = outcome.reports;
  const means = await screen.table("Mean head mass");
  for (const [place, row] of means.rows.entries()) {
    const of = mass.analysis.means[place];
    assert.equal(row[0], `${"ABC"[place]}: ${PIPES[place]}`);
    sameFigure(row[1], of.mean, row[0]);
    const [low, high] = row[2].split(" and ");
    sameFigure(low, of.low, `${row[0]} low`);
    sameFigure(high, of.high, `${row[0]} high`);
    assert.deepEqual(row.slice(3), [String(of.units), String(of.heads), of.letters]);
    // By hand: the mean of the containers' own means.
    const own = bench.flatMap((unit, at) => (unit.name === PIPES[place] ? [mean(RECORDS[at].slice(1).filter((g) => g !== null))] : []));
    sameFigure(row[1], mean(own), `${row[0]} by hand`);
  }
  const verdict = await screen.verdict("Head mass");
  assert.equal(mass.conclusion.kind, "differs");
  assert.equal(mass.conclusion.pairs.length, 1);
  assert.match(verdict, /^C: 110 mm brought heavier heads than A: 75 mm: by /);
  assert.match(verdict, new RegExp(`about 1 in ${Math.round(1 / mass.conclusion.p)} of such trials`));
  assert.equal(water.conclusion.kind, "cannot_be_told");
  assert.match(await screen.verdict("Water per mass of heads"), /^No difference can be told\. That does not mean that the variants are alike/);
  // The same as a table: the command's figures, digit by digit.
  const saving = screen.page.waitForEvent("download");
  await screen.button("Save the result as CSV").click();
  const csv = (await readFile(await (await saving).path(), "utf8")).trim().split("\n").map((line) => line.split(","));
  const column = (name) => csv[0].indexOf(name);
  const told = csv.filter((line) => line[column("row")] === "mean").map((line) => Number(line[column("mean")]));
  assert.deepEqual(told, outcome.reports.flatMap(({ analysis }) => analysis.means.map((row) => row.mean)));
  assert.deepEqual(
    csv.filter((line) => line[column("row")] === "difference").map((line) => Number(line[column("p")])),
    outcome.reports.flatMap(({ analysis }) => analysis.pairs.map((row) => row.p)),
  );
  await screen.page.locator(".trial .measure summary").first().click();
  const variance = await screen.page.locator(".trial .measure").first().locator("details tbody tr").evaluateAll((rows) =>
    rows.map((row) => [...row.cells].map((cell) => cell.textContent)),
  );
  assert.deepEqual(variance.map(([name, freedom]) => [name, freedom]), [
    ["Blocks", "3"],
    ["Variants", "2"],
    ["Containers alike (error)", "6"],
    ["Heads of one container", "34"],
  ]);
  for (const [place, row] of variance.entries()) {
    const of = mass.analysis.table[place];
    assert.ok(Math.abs(number(row[2]) / of.sum_of_squares - 1) < 1e-4, `${row}`);
    if (of.f) assert.ok(Math.abs(number(row[4]) / of.f - 1) < 1e-3, `${row}`);
  }
  // Every head, every container and every mean is in the picture.
  const arcs = (name) => screen.page.locator(`.trial .measure .plot-${name}`).first().getAttribute("d");
  assert.equal((await arcs("dot")).match(/M/g).length, 46);
  assert.equal((await arcs("ring")).match(/M/g).length, 12);

  await screen.choosePaper("Report");
  const { text, pages } = await print(screen.page, { format: "A4" });
  const all = dense(text);
  for (const line of [verdict, "Mean", means.rows[0][1], "Analysis of variance", "Shapiro and Wilk", "Share a small letter"]) {
    assert.ok(all.toLowerCase().includes(dense(line).toLowerCase()), `the report lacks '${line}'`);
  }
  assert.ok(pages.length <= 5, `${pages.length} pages`);
  assert.doesNotMatch(text, NO_FIGURE);
  assert.doesNotMatch(text, /Take in this table|Name of this plan/);

  // It stays on the device, and travels.
  const json = await screen.file();
  await screen.reload();
  await screen.button("Trial: Boards that float, then rest").or(screen.page.locator(".trials .plan")).first().click();
  assert.equal(await screen.verdict("Head mass"), verdict);
  const other = await TrialScreen.open(t, metric);
  await other.page.locator(".file input:visible").setInputFiles({ name: "trial.json", mimeType: "application/json", buffer: Buffer.from(json) });
  await other.button("Add to my plans").click();
  await other.page.locator(".trials .plan").click();
  assert.equal(await other.verdict("Head mass"), verdict);
  assert.deepEqual(JSON.parse(await other.file()), JSON.parse(json));
});

test("records go out as CSV and come in again, by file", async (t) => {
  const screen = await begun(t);
  await screen.layOut();
  await screen.paste(TABLE);
  const waiting = screen.page.waitForEvent("download");
  await screen.button("Save the records as CSV").click();
  const csv = await readFile(await (await waiting).path(), "utf8");
  assert.match(csv, /^unit,treatment,water_l,head_1_g,head_2_g,head_3_g,head_4_g\n1,75 mm,8.4,163,171,150,139\n/);
  assert.equal(csv.trim().split("\n").length, 13);
  const verdict = await screen.verdict("Head mass");
  await screen.button("Remove all records").click();
  await screen.button("Remove them for good").click();
  assert.equal(await screen.page.locator(".trial .measure").count(), 0);
  assert.ok(await screen.page.locator("#trial-seed").isEnabled());
  await screen.page.locator("#trial-file").setInputFiles({ name: "records.csv", mimeType: "text/csv", buffer: Buffer.from(csv) });
  await screen.page.waitForFunction(() => document.querySelector("#trial-paste").value !== "");
  assert.equal(await screen.page.locator("#trial-paste").inputValue(), csv);
  await screen.button("Take in this table").click();
  await screen.page.locator(".trial .measure").first().waitFor();
  assert.equal(await screen.verdict("Head mass"), verdict);
});

test("a trial laid out elsewhere comes with its layout", async (t) => {
  const screen = await begun(t);
  await screen.set("trial-paste", "unit,head_g\n1,150\n");
  await screen.button("Take it in with its layout").click();
  assert.match(await screen.page.locator(".taken-in").innerText(), /^This table tells no layout/);
  const lines = ["unit,block,treatment,head_g"];
  for (const [block, way] of ["north", "south", "middle"].entries()) {
    for (const name of ["as it was", "deeper"]) {
      for (const head of [0, 3, 7]) lines.push(`${way[0]}-${name[0]},${way},${name},${150 + 5 * block + head + (name === "deeper" ? 20 + block : 0)}`);
    }
  }
  await screen.set("trial-paste", lines.join("\n"));
  await screen.button("Take it in with its layout").click();
  await screen.page.locator(".trial .measure").waitFor();
  assert.deepEqual(await screen.bench(), [
    { number: "n-a", letter: "A", name: "as it was", block: "Block north" },
    { number: "n-d", letter: "B", name: "deeper", block: "Block north" },
    { number: "s-a", letter: "A", name: "as it was", block: "Block south" },
    { number: "s-d", letter: "B", name: "deeper", block: "Block south" },
    { number: "m-a", letter: "A", name: "as it was", block: "Block middle" },
    { number: "m-d", letter: "B", name: "deeper", block: "Block middle" },
  ]);
  assert.match(await screen.verdict("Head mass"), /^B: deeper brought heavier heads than A: as it was: by 21/);
});

test("where spreads differ, places given by chance over the whole bench are judged by Welch's analysis", async (t) => {
  const screen = await begun(t);
  await screen.layOut();
  await screen.page.locator("#trial-design").selectOption("randomised");
  await screen.set("trial-replicates", "6");
  await screen.set("trial-columns", "6");
  const bench = await screen.bench();
  assert.equal(bench.length, 18);
  assert.ok(bench.every(({ block }) => block === ""));
  // Close together, far apart, close together. Invented.
  const masses = { A: [99, 100, 101, 100, 98, 102], B: [110, 190, 130, 170, 120, 180], C: [200, 199, 201, 200, 202, 198] };
  await screen.paste(bench.map(({ number: of, letter }) => `${of},${masses[letter].pop()}`).join("\n"));
  const { analysis } = (await solved(await screen.file())).reports[0];
  assert.equal(analysis.method, "own_spreads");
  await screen.page.locator(".trial .measure summary").first().click();
  const said = plain(await screen.page.locator(".trial .measure").first().innerText());
  assert.match(said, /The variants do not spread alike \(Brown and Forsythe, P < 0\.0001\), so Welch's analysis and the differences of Games and Howell are used/);
  const [, f, within] = /Welch's analysis, which needs no equal spread: F = ([\d.]+) with 2 and ([\d.]+) degrees of freedom/.exec(said);
  assert.ok(Math.abs(f / analysis.welch.f - 1) < 1e-3);
  sameFigure(within, analysis.welch.within_freedom, "degrees of freedom");
  assert.match(await screen.verdict("Head mass"), /^C: 110 mm brought heavier heads than A: 75 mm: by 100 g/);
});

test("pseudo-replicates are recognised, and the page says why a test would lie", async (t) => {
  const screen = await begun(t);
  await screen.layOut();
  // Heads whose container nobody wrote down.
  const heads = PIPES.flatMap((name, place) => RECORDS.map((line, at) => `${name},${line[1] + 8 * place + (at % 3)}`));
  await screen.paste(["treatment,head_g", ...heads].join("\n"));
  const without = await screen.verdict("Head mass");
  assert.match(without, /^Nothing can be said: heads were recorded without the container/);
  assert.match(without, /each of the 36 heads for a replicate would claim F = [\d.]+ with 2 and 33 degrees of freedom, P [=<] [\d.]+\. That would be a lie/);
  await screen.button("Remove these lines").click();
  await screen.page.locator(".trial .measure").waitFor({ state: "detached" });

  // One container of each variant, however many heads.
  await screen.set("trial-replicates", "1");
  const warning = screen.trial.locator(".verdict", { hasText: "With one container of each variant nothing can be said" });
  await warning.waitFor();
  const { said, outcome } = await (async () => {
    await screen.paste("1,150,152,149,151\n2,170,171,169,172\n3,190,191,189,192");
    return { said: await screen.verdict("Head mass"), outcome: await solved(await screen.file()) };
  })();
  const { reason, naive } = outcome.reports[0].conclusion;
  assert.equal(reason, "one_unit_each");
  assert.match(said, /^Nothing can be said: all heads of a variant shared one container/);
  assert.match(said, new RegExp(`each of the 12 heads in 3 containers for a replicate would claim F = ${Number(naive.f.toPrecision(3))} with 2 and 9`));
  assert.equal(await screen.page.locator(".trial .measure table").count(), 0, "figures stand where nothing can be said");
});

test("what is wrong stands beside its cell, its line or its field, and stays as it was typed", async (t) => {
  const screen = await begun(t);
  await screen.layOut();
  const said = await screen.paste("unit,head_1_g,head_2_g,colour\n1,150,heavy,x\n99,1,2\n2,4,5,6,7");
  assert.match(said, /Line 1, column 4: the column 'colour' is not known/);
  assert.match(said, /Line 2, column 3: 'heavy' is not a number/);
  assert.match(said, /Line 4: 5 cells, but the table has 4 columns/);
  const cell = screen.page.locator("#record-1-2");
  assert.equal(await cell.inputValue(), "heavy");
  assert.equal(await cell.getAttribute("aria-invalid"), "true");
  assert.match(await screen.page.locator("#record-1-2-problem").innerText(), /'heavy' is not a number/);
  assert.match(await screen.trial.innerText(), /No container of this layout is called '99'/);
  assert.match(await screen.trial.innerText(), /The result waits until these records are mended/);
  await screen.set("record-1-2", "0.01");
  assert.match(plain(await screen.page.locator("#record-1-2-problem").innerText()), /10 mg is outside what is allowed: 0\.1 g to 20 kg/);
  await screen.set("record-1-2", "5 oz");
  // 5 oz are 141.75 g.
  assert.match(await cell.inputValue(), /^141\.7/);
  await screen.button("Remove these lines").click();
  await screen.button("Remove all records").click();
  await screen.button("Remove them for good").click();

  await screen.set("trial-replicates", "many");
  assert.match(await screen.page.locator("#trial-replicates-problem").innerText(), /'many' is not a number/);
  assert.equal(await screen.page.locator("#trial-replicates").inputValue(), "many");
  assert.equal(await screen.page.locator(".trial .bench-plan").count(), 0);
  await screen.set("trial-replicates", "51");
  assert.match(await screen.page.locator("#trial-replicates-problem").innerText(), /51 is outside what is allowed: 1 to 50/);
  await screen.set("trial-replicates", "4");
  await screen.set("variant-name-2", "75 mm");
  assert.match(await screen.page.locator("#variant-name-2-problem").innerText(), /stands twice/);
  await screen.set("variant-name-2", "middle");
  assert.equal(await screen.page.locator(".trial .bench-plan").count(), 1);

  // A value that the plan refuses is told at its variant, in the words of the plan.
  await screen.page.locator("#trial-differs").selectOption({ label: "Seedling age at transplanting" });
  assert.equal(await screen.page.locator("#variant-name-3").inputValue(), "Variant C");
  await screen.set("variant-value-2", "14");
  assert.equal(await screen.page.locator("#variant-name-2").inputValue(), "middle");
  await screen.set("variant-value-3", "900");
  assert.match(plain(await screen.page.locator("#variant-value-3-problem").innerText()), /900.* is outside what is allowed: 3.* to 60/);
  await screen.set("variant-value-3", "21");
  assert.match(await screen.page.locator("#variant-name-3").inputValue(), /^21/);

  // A deleted trial comes back whole; the menu of plans leads out of one.
  await screen.openMenu();
  await screen.menu.locator(".plan").first().click();
  await screen.focusMoves("step-1");
  await screen.page.locator(".trials .plan").click();
  const { trials } = JSON.parse(await screen.stored());
  await screen.button("Delete this trial").click();
  await screen.focusMoves("trial-undelete");
  assert.equal(JSON.parse(await screen.stored()).trials, undefined);
  await screen.button("Undo").click();
  await screen.focusMoves("trials");
  assert.deepEqual(JSON.parse(await screen.stored()).trials, trials);
});

test("by keyboard alone, and in ounces and gallons", async (t) => {
  const screen = await TrialScreen.open(t, { context: { locale: "en-US" } });
  const { page } = screen;
  await screen.openExample("bucket");
  await page.locator("#trials").focus();
  await screen.tabTo(".trials .kept-list button.main");
  await page.keyboard.press("Enter");
  await screen.focusMoves("trials");
  await screen.tabTo("#variant-note-2");
  await page.keyboard.type("Another cultivar");
  await screen.tabTo("#variant-name-2");
  await page.keyboard.type("Red leaf");
  await screen.tabTo("#trial-replicates");
  await page.keyboard.type("2");
  // What was typed is kept, and the focus goes on from where it was.
  await page.keyboard.press("Tab");
  assert.equal(await page.evaluate(() => document.activeElement.id), "trial-heads_per_unit");
  assert.equal((await screen.bench()).length, 6);
  assert.ok((await screen.bench()).some(({ name }) => name === "Red leaf"));
  await screen.tabTo("#record-1-0");
  await page.keyboard.type("4");
  await page.keyboard.press("Tab");
  await page.keyboard.type("5");
  await page.keyboard.press("Tab");
  assert.equal(await page.evaluate(() => document.activeElement.id), "record-1-2");
  const { trials } = JSON.parse(await screen.stored());
  const [record] = trials[0].trial.records;
  // NIST Handbook 44, appendix C: a gallon is 3.785412 L, an ounce 28.34952 g.
  assert.ok(Math.abs(record.water_l - 4 * 3.785412) < 1e-4);
  assert.ok(Math.abs(record.heads_g[0] - 5 * 28.34952) < 1e-3);
  assert.equal(await page.locator("#record-1-1").inputValue(), "5");
});

for (const colorScheme of ["light", "dark"]) {
  test(`axe, and nothing sticks out at 320, ${colorScheme}`, async (t) => {
    const screen = await begun(t, { viewport: { ...PHONE, width: 320 }, colorScheme, ...{ context: { locale: "en-GB" } } });
    const found = [];
    const look = async (state) => {
      if (await screen.overflows()) found.push(`${state}: sticks out`);
      for (const violation of await violations(screen)) found.push(`${state}: ${violation}`);
    };
    await look("begun");
    await screen.layOut();
    await screen.paste(TABLE);
    await screen.unfoldAll();
    await look("recorded");
    await screen.set("record-2-1", "heavy");
    await look("a wrong cell");
    await screen.paste("treatment,head_g\n75 mm,1\n");
    await look("a stray line");
    await screen.set("trial-difference_pct", "x");
    await look("a wrong field");
    await screen.button("Leave this trial").click();
    await screen.focusMoves("trials");
    await look("the list");
    const small = await screen.page.evaluate(() =>
      [...document.querySelectorAll(".trials :is(button, input, select, summary)")]
        .filter((at) => at.checkVisibility() && at.getBoundingClientRect().height < 44)
        .map((at) => at.id || at.textContent),
    );
    assert.deepEqual(small, [], "targets below 44 px");
    assert.deepEqual(found, []);
  });
}
