// The tank as something to build: planned from nothing, checked, mended, drawn and printed; the
// template measured on paper; loads that no place bears seen everywhere.

import assert from "node:assert/strict";
import test from "node:test";
import { metric, NO_FIGURE, open } from "./chemistry.mjs";
import { bounds, strokes } from "./measure.mjs";
import { dense, print } from "./print.mjs";
import { PHONE } from "./rig.mjs";
import { plain, Screen } from "./screen.mjs";

/** What a ruler on paper may be off, mm: the issue's own bound. */
const RULER_MM = 0.2;
const CHECKS = "What holds, floats and sags";
const MATERIALS = "What to get";
const PAPER = { card: "Planting card", sheet: "Build sheet", template: "Drilling template" };

const BOARDS = {
  "container.method": "floating_boards",
  "container.length_cm": "720",
  "container.width_cm": "125",
  "container.height_cm": "20",
  "container.board_length_cm": "122",
  "container.board_width_cm": "59.8",
  "container.board_thickness_cm": "2.5",
  "container.board_count": "12",
  "container.pipe": "metric_110",
  "crop.spacing_across_cm": "19",
  "crop.spacing_along_cm": "30",
  "crop.pattern": "square",
};

const COVERED = {
  "container.method": "covered_tank",
  "container.shape": "rectangular",
  "container.length_cm": "240",
  "container.width_cm": "120",
  "container.height_cm": "14",
  "container.cover_thickness_cm": "2.5",
  "build.cover": "extruded_foam",
  "build.prop_rows": "2",
  "crop.spacing_across_cm": "20",
  "crop.spacing_along_cm": "30",
  "crop.pattern": "square",
};

/** A plan from the first page's 'Start from what I have'. */
async function fromNothing(t, entries) {
  const screen = await Screen.open(t, metric);
  await screen.startOwn();
  await screen.enter(entries);
  assert.equal(await screen.summary.count(), 0, "there are problems");
  await screen.page.locator("#building > summary").click();
  await screen.page.locator("#building .build-part").first().waitFor();
  // The checks that passed are folded.
  await screen.resultText();
  return screen;
}

/** A pattern whose spaces are any white space: figures are held to their units by one that does not break. */
const spaced = (pattern) => new RegExp(pattern.source.replaceAll(" ", "\\s"), pattern.flags);
/** Findings that are no praise and match. */
const failing = (screen, pattern) => screen.page.locator(".findings :is(.stop, .care)", { hasText: spaced(pattern) });

async function choosePaper(screen, paper) {
  await screen.choosePaper(PAPER[paper]);
}

async function printed(screen, paper, format) {
  await choosePaper(screen, paper);
  return print(screen.page, { format });
}

/** The drawings: caption and the texts in it. */
const drawings = (screen) =>
  screen.page.locator("#building .plan-drawing").evaluateAll((all) =>
    all.map((figure) => ({
      caption: figure.querySelector("figcaption").textContent,
      texts: [...figure.querySelectorAll("text")].map((text) => text.textContent.replaceAll(/\s/g, " ")),
    })),
  );

async function checkSheet(screen, lines) {
  const name = await screen.planName.inputValue();
  for (const format of ["A4", "Letter"]) {
    const { pages, text } = await printed(screen, "sheet", format);
    const all = dense(text);
    assert.ok(pages.length <= 4, `${pages.length} pages of ${format}`);
    for (const line of [name, ...lines]) assert.ok(all.includes(dense(line)), `${format} lacks '${line}'`);
    assert.doesNotMatch(text, /Name of this plan|Never raise the level|CSV/);
    assert.doesNotMatch(text, NO_FIGURE);
  }
}

test("a tank of 7.2 × 1.25 m with floating boards, from nothing to paper", async (t) => {
  const screen = await fromNothing(t, BOARDS);
  for (const said of [/Resting boards sag/, /of moist air is left at its least/, /the edge dips by/, /room between the sides/, /sides bulge/, /pipes stay down/]) {
    const item = screen.page.locator(".findings li", { hasText: spaced(said) });
    assert.equal(await item.count(), 1, String(said));
    assert.equal(await item.locator(".working").count(), 1, `${said} has no working`);
  }
  assert.equal(await failing(screen, /./).filter({ hasText: /sag|jam|turn|lift|bulge/i }).count(), 0);

  const [tank, board, sheet] = await drawings(screen);
  for (const size of ["720 cm", "125 cm", "59.8 cm", "122 cm"]) assert.ok(tank.texts.includes(size), `${tank.texts} lacks ${size}`);
  // Four of 30 cm go into 122 cm, three of 19 cm into 59.8 cm, spread evenly.
  for (const size of ["122 cm", "59.8 cm", "15.2 cm", "30.5 cm", "10 cm", "19.9 cm"]) assert.ok(board.texts.includes(size), `${board.texts} lacks ${size}`);
  assert.match(plain(board.caption), /12 holes of 46 mm/);
  // Two by two from a sheet of 244 × 122 cm.
  assert.match(sheet.caption, /^3 sheets alike: 4 pieces from each/);

  const checks = await screen.table(CHECKS);
  assert.deepEqual(checks.heads, ["What", "In this plan", "Wanted"]);
  const figure = (what) => checks.rows.find(([name]) => name.startsWith(what))?.[1];
  for (const what of ["Sag between pipes", "Moist air at harvest", "At its least", "Metacentric", "Edge dips", "Room beside", "Ballast", "Push on", "Sides bulge", "Load on"]) {
    assert.match(figure(what) ?? "", /\d/, what);
  }
  // 1250 mm less a board of 1220; 7200 mm less twelve of 598.
  assert.equal(figure("Room beside"), "30 mm, 24 mm");

  const materials = await screen.table(MATERIALS);
  const amount = (what) => materials.rows.find(([name]) => name === what)?.[1];
  assert.equal(amount("Net pots"), "144");
  assert.equal(amount("Sheets for boards or cover"), "3");
  // Two pipes of 7.2 m.
  assert.equal(amount("Pipe"), "14 m");
  const csv = decodeURIComponent(await screen.page.locator("#building a[download$='.csv']").getAttribute("href"));
  assert.match(csv, /^data:text\/csv[^,]*,item,quantity,unit/);
  assert.match(csv, /\r\nnet_pot,144,piece/);
  await screen.enter({ "build.sheet_price": "20", "build.pot_price": "0.1" });
  const last = (await screen.table(MATERIALS)).rows.at(-1);
  assert.deepEqual(last, ["All that has a price", "", "", "$74.40"]);

  await checkSheet(screen, ["720 cm", "12 boards of 122 cm × 59.8 cm", "pull them in to one end", "drown in a few centimetres", "Net pots", "$74.40"]);
  await choosePaper(screen, "card");
  await screen.chooseUnits("us");
  assert.match((await screen.table(MATERIALS)).rows.find(([name]) => name === "Pipe")[1], /^47 ft$/);
  assert.doesNotMatch(plain(await screen.page.locator("#building").textContent()), NO_FIGURE);
});

test("a covered tank of 2.4 × 1.2 m, from nothing to paper", async (t) => {
  const screen = await fromNothing(t, COVERED);
  assert.equal(await failing(screen, /cover sags/).count(), 0);
  const [tank, cover] = await drawings(screen);
  for (const size of ["240 cm", "120 cm"]) assert.ok(tank.texts.includes(size), size);
  assert.match(cover.caption, /^The cover: 48 holes/);
  const parts = plain(await screen.page.locator("#building").textContent());
  assert.match(parts, /Props 14 cm tall under the cover, in rows at 40 cm, 80 cm from one side/);
  assert.match(parts, /press out all air under it/);
  await checkSheet(screen, ["240 cm", "Sag of the cover", "Props", "Siphon off"]);

  await screen.enter({ "build.prop_rows": "0" });
  const sags = failing(screen, /The cover sags [\d.]+ mm under grown heads; up to 10 mm is allowed\. Prop it from below\./);
  await sags.waitFor();
  await sags.locator(".mend", { hasText: /^\s*Rows of props under the cover: [1-9]\s*$/ }).click();
  await sags.waitFor({ state: "detached" });
  assert.match(await screen.field("build.prop_rows").inputValue(), /^[1-9]$/);
  await screen.page.locator("#unmend").click();
  await sags.waitFor();
  assert.equal(await screen.field("build.prop_rows").inputValue(), "0");
});

/** What is entered, what then fails and by how much, and the button that mends it. */
const FAILURES = [
  [{ "container.pipe_spacing_cm": "105" }, /boards sag [\d.]+ mm .* up to 15 mm/, /^Pipe to pipe.*: \d+ cm$/],
  [{ "build.floor_drop_cm": "4" }, /4 cm out of level over 735 cm; up to 1 cm/, /^Floor: one end lower by: 1 cm$/],
  [{ "build.brace_spacing_cm": "700" }, /sides bulge [\d.]+ mm \(up to 5 mm/, /^Brace to brace.*: \d+ cm$/],
  [{ "container.width_cm": "122.2" }, /have 2 mm of room .* at least 5 mm/, /^Inside width: 122\.5 cm$/],
  [{ "container.board_count": "10" }, /strip of \d+ mm stays open|strip of [\d.]+ cm stays open/, /^Boards in one tank: 12$/],
  [{ "container.pipe_ends": "capped" }, /Each metre of pipe lifts [\d.]+ kg/, /^Pipe ends: Open/],
  [{ "container.foam": "expanded_i" }, /Expanded \(beaded\) foam takes up/, /^Foam of the boards: Extruded/],
  [{ "build.edge_distance_cm": "3" }, /Only [\d.]+ mm of foam is left/, /^Middle of a hole to the edge: [\d.]+ cm$/],
  [{ "build.sheet_width_cm": "50" }, /stock sheet is too small/, /^Stock sheet: width: 61 cm$/],
];

test("a failing value says what fails, by how much, and is mended by one tap and back", async (t) => {
  const screen = await open(t, "floating_boards");
  for (const [entries, said, mend] of FAILURES) {
    const [path] = Object.keys(entries);
    const field = screen.field(path);
    const before = await field.inputValue();
    await screen.enter(entries);
    const finding = failing(screen, said);
    await finding.waitFor();
    assert.equal(await finding.locator(".working").count(), 1, path);
    await finding.getByRole("button", { name: spaced(mend) }).first().click();
    await screen.focusMoves("unmend");
    await finding.waitFor({ state: "detached" });
    assert.match(plain(await screen.page.locator(".notice", { has: screen.page.locator("#unmend") }).innerText()), /^Changed: /);
    await screen.page.locator("#unmend").click();
    await finding.waitFor();
    assert.equal(await field.inputValue(), entries[path]);
    await screen.enter({ [path]: before });
    await finding.waitFor({ state: "detached" });
  }
});

test("the template is true to scale, hole by hole and page by page", async (t) => {
  const screen = await open(t, "floating_boards", { "crop.pattern": "square" });
  for (const format of ["A4", "Letter"]) {
    const { file, pages, text } = await printed(screen, "template", format);
    assert.match(plain(await screen.page.locator(".printing").innerText()), new RegExp(`\\b${pages.length} pages, at true scale`));
    assert.match(text, /print again at 100%/);
    const holes = [];
    let edges = 0;
    for (let page = 1; page <= pages.length; page += 1) {
      const [, row, column] = /Row (\d+), column (\d+)/.exec(pages[page - 1]);
      const lines = await strokes(file, page);
      const of = (width) => lines.filter((line) => line.width === width).flatMap((line) => line.parts);
      const bar = of(0.5).map(bounds).find(({ height }) => height < 0.1);
      assert.ok(Math.abs(bar.width - 100) < RULER_MM, `${format}, page ${page}: ${bar.width} mm`);
      const frame = bounds(of(0.1)[0]);
      edges += of(1).length;
      const crosses = of(0.25).filter((part) => part.length === 2).map(bounds);
      for (const across of crosses.filter(({ width, height }) => height < 0.1 && Math.abs(width - 12) < RULER_MM)) {
        const [x, y] = [across.left + across.width / 2, across.top];
        const down = crosses.find(
          ({ left, top, height }) => Math.abs(left - x) < RULER_MM && Math.abs(height - 12) < RULER_MM && Math.abs(top + height / 2 - y) < RULER_MM,
        );
        assert.ok(down, `a cross without a second line on page ${page}`);
        const inside = x >= frame.left && x < frame.left + frame.width && y >= frame.top && y < frame.top + frame.height;
        if (!inside) continue;
        holes.push([(column - 1) * frame.width + x - frame.left, (row - 1) * frame.height + y - frame.top]);
        const round = of(0.25)
          .filter((part) => part.length > 10)
          .map(bounds)
          .find(({ left, width }) => Math.abs(left + width / 2 - x) < RULER_MM);
        assert.ok(Math.abs(round.width - 46) < RULER_MM, `a hole of ${round.width} mm`);
      }
    }
    assert.ok(edges >= pages.length, "the edge of the board is not drawn");
    // Four of 30 cm along 122 cm and three of 20 cm along 61 cm, spread evenly.
    const wanted = [0, 1, 2].flatMap((row) => [0, 1, 2, 3].map((at) => [1220 * ((at + 0.5) / 4), 610 * ((row + 0.5) / 3)]));
    assert.equal(holes.length, wanted.length);
    for (const [x, y] of wanted) {
      const off = Math.min(...holes.map(([left, top]) => Math.hypot(left - x, top - y)));
      // Each page between the corner and the hole may be off by as much as its bar.
      assert.ok(off < 4 * RULER_MM, `${format}: the hole at ${x}, ${y} is off by ${off} mm`);
    }
    for (const [, first] of wanted.filter((_, index) => index % 4 === 0)) {
      const xs = holes.filter(([, y]) => Math.abs(y - first) < 5).map(([x]) => x).toSorted((a, b) => a - b);
      assert.equal(xs.length, 4);
      for (let at = 1; at < xs.length; at += 1) assert.ok(Math.abs(xs[at] - xs[at - 1] - 305) < 2 * RULER_MM, xs.join());
    }
  }
});

const UNSAFE = [
  [{ "build.stands_on": "balcony_or_roof" }, /Do not build it there: no tanks on balconies/],
  [{ "build.stands_on": "bench" }, /Do not build it there: nobody knows/],
  [{ "build.stands_on": "upper_floor", "build.support_rating_kg_per_m2": "100" }, /Do not build it there: too heavy/],
  [{ "container.height_cm": "60" }, /competent person/],
];

for (const [entries, short] of UNSAFE) {
  test(`${Object.values(entries).join(", ")}: cannot be missed on screen or paper`, async (t) => {
    const screen = await open(t, "covered_tank", {}, { ...metric, viewport: PHONE });
    assert.equal(await screen.page.locator(".alarm:visible").count(), 0);
    await screen.enter(entries);
    const alarm = screen.page.locator(".result .alarm");
    await alarm.waitFor();
    const text = plain(await alarm.locator("p").first().textContent());
    // Whatever step is shown, the foot of a phone says it.
    for (const step of ["container", "crop", "fertilizer", "climate"]) {
      await screen.goTo(step);
      const foot = screen.page.locator(".glance-text");
      assert.match(await foot.innerText(), short);
      assert.ok(await foot.isVisible());
    }
    const [first, headline] = await Promise.all([alarm.boundingBox(), screen.page.locator(".headline").boundingBox()]);
    assert.ok(first.y < headline.y, "figures come before the alarm");
    assert.equal(await screen.overflows(), false);
    for (const format of ["A4", "Letter"]) {
      for (const paper of ["card", "sheet"]) {
        const { pages } = await printed(screen, paper, format);
        assert.ok(dense(pages[0]).includes(dense(text.slice(0, 40))), `${paper}, ${format}: ${text}`);
        if (paper === "card") assert.equal(pages.length, 1, `a card of ${pages.length} pages of ${format}`);
      }
    }
    const { pages } = await printed(screen, "template", "A4");
    for (const page of pages) assert.match(plain(page), short);
  });
}

test("what is printed follows the choice, and nobody builds a bucket", async (t) => {
  const screen = await open(t, "covered_tank");
  await choosePaper(screen, "sheet");
  assert.equal(await screen.button("Print the build sheet").count(), 1);
  await choosePaper(screen, "template");
  assert.equal(await screen.button("Print the template").count(), 1);
  await screen.openMenu();
  await screen.button("New plan").click();
  await screen.openExample("bucket");
  const papers = await screen.page.getByLabel("What to print").locator("option").allInnerTexts();
  assert.deepEqual(papers.filter((paper) => [PAPER.sheet, PAPER.template].includes(paper)), []);
  assert.ok(papers.length > 3, papers.join());
  assert.equal(await screen.page.locator("#building, #how-built").count(), 0);
  const { text, pages } = await print(screen.page);
  assert.equal(pages.length, 1);
  assert.match(text, /Never raise the level/);
});
