// The season seen: any day by drag, touch, keys and play; drawing, sentence, curves and table say the
// same; nothing on the page moves while the day does; the drawing is to scale; what fails is mended by
// one tap.

import assert from "node:assert/strict";
import test from "node:test";
import axe from "axe-core";
import { open } from "./chemistry.mjs";
import { solved } from "./command.mjs";
import { DESKTOP, PHONE } from "./rig.mjs";
import { EXAMPLES, plain, Screen } from "./screen.mjs";

/** Coordinates are written to the hundredth of a millimetre or finer. */
const DRAWN_MM = 0.02;
const GB = { locale: "en-GB" };

/** Plans that fail on purpose, each with the field that spoils it. */
const FAILING = {
  "pot too short": ["bucket", { "container.pot_height_cm": "3.5", "container.fill_depth_cm": "29" }],
  "fill too low": ["covered_tank", { "container.fill_depth_cm": "9" }],
  "pipe too thick": ["floating_boards", { "container.pipe": "inch_6", "container.fill_depth_cm": "14" }],
};

/** What each of the four ways to see a day says of it. */
async function read(screen) {
  await screen.settled();
  await screen.page.evaluate(() => (document.querySelector("#day-table").open = true));
  await screen.page.locator("#day-table tr[aria-current]").waitFor({ state: "attached" });
  return screen.page.evaluate(() => {
    const text = (at) => at.textContent.replaceAll(/\s+/g, " ").trim();
    const row = document.querySelector("#day-table tr[aria-current]");
    const wide = document.querySelector(".across svg");
    const mark = wide.querySelector(".now").getAttribute("d");
    return {
      slider: Number(document.querySelector("#day").value),
      spoken: document.querySelector("#day").getAttribute("aria-valuetext"),
      drawing: Number(document.querySelector("#section").dataset.day),
      sentence: text(document.querySelector("#section-sentence")),
      curves: [...document.querySelectorAll(".curve-name strong")].map(text),
      dots: [...document.querySelectorAll(".dot")].map((dot) => dot.getAttribute("d").match(/[\d.]+/g).map(Number)),
      line: Number(/M([\d.]+)/.exec(mark)[1]),
      row: row && [...row.cells].map(text),
      marked: document.querySelectorAll("#day-table tr[aria-current]").length,
    };
  });
}

/** All of them show this day and agree to the last digit. */
async function agree(screen, day, last) {
  const seen = await read(screen);
  assert.equal(seen.slider, day);
  assert.equal(seen.spoken, `Day ${day}`);
  assert.equal(seen.drawing, day);
  assert.equal(seen.marked, 1);
  const [number, level, gap, head, ec] = seen.row;
  assert.equal(Number(number), day);
  assert.ok(
    seen.sentence.startsWith(`Day ${day}: solution ${level} deep, moist air gap ${gap}, heads of about ${head}, EC ${ec}. `),
    `'${seen.sentence}' against ${seen.row}`,
  );
  assert.deepEqual(seen.curves, [level, head, ec]);
  for (const x of [seen.line, ...seen.dots.map(([across]) => across)]) {
    assert.ok(Math.abs(x - (100 * day) / last) < 0.001, `${x} for day ${day} of ${last}`);
  }
}

const lastDay = async (screen) => Number(await screen.day.getAttribute("max"));

/** The middle of the curves' area at a share of the season. */
async function onCurves(screen, share) {
  const area = screen.page.locator(".across");
  await area.scrollIntoViewIfNeeded();
  const box = await area.boundingBox();
  return [box.x + box.width * share, box.y + box.height / 2];
}

for (const example of EXAMPLES) {
  test(`${example}: drawing, sentence, curves and table agree on every day`, async (t) => {
    const screen = await open(t, example);
    const last = await lastDay(screen);
    const outcome = await solved(screen);
    assert.equal(outcome.season.days.length, last + 1);
    for (let day = 0; day <= last; day += 1) {
      await screen.showDay(day);
      await agree(screen, day, last);
    }
    const { rows } = await screen.table("Day by day");
    assert.equal(rows.length, last + 1);
    // The table's figures are the command's, rounded: a tenth of a centimetre, a hundredth of mS/cm.
    rows.forEach((row, day) => {
      const told = outcome.season.days[day];
      assert.ok(Math.abs(Number.parseFloat(row[1]) - told.level_cm) <= 0.0500001, `level of day ${day}`);
      assert.ok(Math.abs(Number.parseFloat(row[2]) - told.gap_cm) <= 0.0500001, `gap of day ${day}`);
      assert.ok(Math.abs(Number.parseFloat(row[4]) - told.ec_ms_per_cm) <= 0.00500001, `EC of day ${day}`);
    });
  });

  test(`${example}: the drawing is to scale`, async (t) => {
    const screen = await open(t, example);
    const outcome = await solved(screen);
    const last = await lastDay(screen);
    for (const day of [0, 1, Math.round(last / 3), Math.round((last * 2) / 3), last]) {
      await screen.showDay(day);
      const drawn = await screen.drawing();
      const season = outcome.season.days[day];
      const roots = outcome.roots.days[day];
      const near = (got, want, what) => assert.ok(Math.abs(got - want) <= DRAWN_MM, `${what} of day ${day}: ${got} for ${want}`);
      near(drawn.solution.height, season.level_cm * 10, "level");
      near(drawn.covers[0].y - drawn.solution.height > 0 ? drawn.covers[0].y - drawn.solution.height : 0, season.gap_cm * 10, "gap");
      assert.ok(Math.abs(drawn.perMm.right - drawn.perMm.up) < 1e-6 && !drawn.perMm.skewed);
      // Roots and pots are drawn around the top of the cover that they hang from.
      const top = drawn.covers[0].y + drawn.covers[0].height;
      const lowest = (selector) =>
        screen.page.locator(selector).evaluateAll((paths) => Math.min(...paths.filter((path) => path.getAttribute("d")).map((path) => path.getBBox().y)));
      near(top + (await lowest(".pot")), roots.foot_cm * 10, "foot of the pots");
      const tip = await lowest(".root");
      assert.ok(tip + top >= roots.tip_cm * 10 - DRAWN_MM - 15, "a root far below its tip");
      if (roots.reached) near(await deepest(screen) + top, roots.tip_cm * 10, "tip of the roots");
      const wet = await screen.page.locator(".medium").evaluate((medium) => medium.classList.contains("wet"));
      assert.equal(wet, roots.contact, `contact on day ${day}`);
    }
  });
}

/** The end of the longest root, among the absolute coordinates of the paths. */
const deepest = (screen) =>
  screen.page
    .locator(".root")
    .evaluateAll((paths) =>
      Math.min(...paths.flatMap((path) => [...path.getAttribute("d").matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map((match) => Number(match[2])))),
    );

test("a day is reached by mouse on the slider and on the curves", async (t) => {
  const screen = await open(t, "bucket");
  const { page } = screen;
  const last = await lastDay(screen);
  await screen.day.scrollIntoViewIfNeeded();
  const box = await screen.day.boundingBox();
  await page.mouse.move(box.x + box.width - 8, box.y + box.height / 2);
  await page.mouse.down();
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2, { steps: 6 });
  await page.mouse.up();
  const halfway = Number(await screen.day.inputValue());
  assert.ok(Math.abs(halfway - last / 2) <= 1, `${halfway} of ${last}`);
  await agree(screen, halfway, last);

  await page.mouse.move(...(await onCurves(screen, 9 / last)));
  assert.equal(Number(await screen.day.inputValue()), halfway, "a mouse that passes over sets nothing");
  await page.mouse.down();
  await agree(screen, 9, last);
  await page.mouse.move(...(await onCurves(screen, 30 / last)), { steps: 5 });
  await agree(screen, 30, last);
  await page.mouse.move(...(await onCurves(screen, 1.4)), { steps: 5 });
  await agree(screen, last, last);
  await page.mouse.up();
});

test("a day is reached by finger, on the slider and on the curves", async (t) => {
  const screen = await open(t, "floating_boards", {}, { viewport: PHONE, touch: true, context: GB });
  const { page } = screen;
  const last = await lastDay(screen);
  const finger = await page.context().newCDPSession(page);
  const touch = (type, x, y) =>
    finger.send("Input.dispatchTouchEvent", { type, touchPoints: type === "touchEnd" ? [] : [{ x, y }] });
  await screen.day.scrollIntoViewIfNeeded();
  const box = await screen.day.boundingBox();
  const middle = box.y + box.height / 2;
  await touch("touchStart", box.x + box.width - 8, middle);
  for (const share of [0.9, 0.7, 0.5]) await touch("touchMove", box.x + box.width * share, middle);
  await touch("touchEnd");
  const halfway = Number(await screen.day.inputValue());
  assert.ok(Math.abs(halfway - last / 2) <= 1, `${halfway} of ${last}`);
  await agree(screen, halfway, last);

  await page.touchscreen.tap(...(await onCurves(screen, 7 / last)));
  await agree(screen, 7, last);
  await touch("touchStart", ...(await onCurves(screen, 7 / last)));
  for (const day of [12, 16, 21]) await touch("touchMove", ...(await onCurves(screen, day / last)));
  await touch("touchEnd");
  await agree(screen, 21, last);
});

test("a day is reached by the keyboard alone, and play stops at harvest", async (t) => {
  const screen = await open(t, "bottle");
  const { page } = screen;
  const last = await lastDay(screen);
  await screen.day.focus();
  for (const [key, day] of [["Home", 0], ["ArrowRight", 1], ["ArrowUp", 2], ["ArrowLeft", 1], ["PageUp", 8], ["PageDown", 1], ["PageDown", 0], ["End", last], ["PageUp", last]]) {
    await page.keyboard.press(key);
    await agree(screen, day, last);
  }
  await page.keyboard.press("Shift+Tab");
  assert.equal(await page.evaluate(() => document.activeElement.id), "play");
  await page.keyboard.press("Enter");
  assert.equal(await screen.page.locator("#section-sentence").getAttribute("aria-live"), "off");
  await page.waitForFunction(() => Number(document.querySelector("#day").value) >= 5);
  await page.keyboard.press("Space");
  const paused = Number(await screen.day.inputValue());
  assert.ok(paused >= 5 && paused < last, "it starts again at planting");
  await page.waitForTimeout(500);
  await agree(screen, paused, last);
  await page.keyboard.press("Enter");
  await page.waitForFunction(() => document.querySelector("#play").textContent === "Play");
  await agree(screen, last, last);
  assert.equal(await screen.page.locator("#section-sentence").getAttribute("aria-live"), "polite");
});

for (const [name, viewport] of [["phone", PHONE], ["desktop", DESKTOP]]) {
  test(`nothing moves on the page while the day does, ${name}`, async (t) => {
    const screen = await open(t, "floating_boards", {}, { viewport, context: GB });
    const { page } = screen;
    const last = await lastDay(screen);
    await page.evaluate(() => (document.querySelector("#day-table").open = true));
    await screen.day.scrollIntoViewIfNeeded();
    await page.waitForTimeout(600);
    await page.evaluate(() => {
      window.shifts = [];
      new PerformanceObserver((list) => {
        for (const entry of list.getEntries()) window.shifts.push(entry.value);
      }).observe({ type: "layout-shift" });
    });
    const heights = new Set();
    for (let day = 0; day <= last; day += 1) {
      await screen.showDay(day);
      heights.add(await page.evaluate(() => document.documentElement.scrollHeight));
    }
    await screen.button("Play").click();
    await page.waitForFunction(() => document.querySelector("#play").textContent === "Play", undefined, { timeout: 20_000 });
    await agree(screen, last, last);
    assert.deepEqual(await page.evaluate(() => window.shifts), []);
    assert.equal(heights.size, 1, `the page is ${[...heights]} px high`);
  });
}

test("labels never cover each other nor leave the page", async (t) => {
  for (const width of [390, 810, 1440]) {
    const screen = await Screen.open(t, { viewport: { width, height: 900 }, context: GB });
    for (const example of EXAMPLES) {
      await screen.openExample(example);
      const last = await lastDay(screen);
      for (let day = 0; day <= last; day += 1) {
        await screen.showDay(day);
        const boxes = await screen.page.locator(".word").evaluateAll((words) => words.map((word) => word.getBoundingClientRect().toJSON()));
        assert.ok(boxes.length > 0);
        boxes.forEach((box, index) => {
          assert.ok(box.right <= width && box.left >= 0, `${example}, day ${day}, ${width}`);
          for (const other of boxes.slice(index + 1)) {
            const apart = box.bottom <= other.top + 3 || other.bottom <= box.top + 3;
            assert.ok(apart, `${example}, day ${day}, ${width}: ${JSON.stringify([box, other])}`);
          }
        });
      }
      await screen.openMenu();
      await screen.button("New plan").click();
    }
  }
});

test("who wants stillness sees steps", async (t) => {
  const still = await open(t, "bottle", {}, { context: { ...GB, reducedMotion: "reduce" } });
  await still.showDay(0);
  await still.button("Play").click();
  await still.page.waitForTimeout(600);
  assert.equal(Number(await still.day.inputValue()), 0, "the next step comes too soon");
  await still.page.waitForFunction(() => Number(document.querySelector("#day").value) === 1);
  const moving = await still.page.evaluate(() =>
    document.getAnimations().filter((animation) => animation.playState === "running").length,
  );
  assert.equal(moving, 0);
});

for (const [name, [example, entries]] of Object.entries(FAILING)) {
  test(`${name}: the day, the reason, and a mend by one tap that can be taken back`, async (t) => {
    const screen = await open(t, example, entries);
    const before = await screen.values();
    const { failure } = (await solved(screen)).roots;
    assert.ok(failure && failure.mends.length > 0, JSON.stringify(failure));
    const flag = screen.page.locator("#failing-day");
    assert.ok(plain(await flag.innerText()).startsWith(`Day ${failure.day}: `));
    const last = await lastDay(screen);
    const line = await screen.page.locator(".across .failing").getAttribute("d");
    assert.ok(Math.abs(Number(/M([\d.]+)/.exec(line)[1]) - (100 * failure.day) / last) < 0.001);
    const at = await screen.page.locator(".days.failing").evaluate((slider) => Number(slider.style.getPropertyValue("--at")));
    assert.ok(Math.abs(at - failure.day / last) < 1e-9, `the slider marks ${at}`);
    await flag.click();
    await agree(screen, failure.day, last);
    assert.match((await read(screen)).sentence, /Neither pots nor roots touch/);
    const buttons = screen.page.locator(".finding", { hasText: /On day \d+/ }).locator(".mend");
    assert.equal(await buttons.count(), failure.mends.length);
    for (let index = 0; index < failure.mends.length; index += 1) {
      await buttons.nth(index).click();
      await screen.focusMoves("unmend");
      assert.equal(await flag.count(), 0, `${JSON.stringify(failure.mends[index])} does not mend`);
      assert.equal((await solved(screen)).roots.failure, null);
      await screen.page.keyboard.press("Enter");
      await screen.focusMoves("findings");
      assert.deepEqual(await screen.values(), before);
      assert.equal(await flag.count(), 1);
    }
  });
}

for (const colorScheme of ["light", "dark"]) {
  test(`axe finds nothing with the table open, a failing day and a mend, ${colorScheme}`, async (t) => {
    const [example, entries] = FAILING["fill too low"];
    const screen = await open(t, example, entries, { viewport: PHONE, colorScheme, context: GB });
    await screen.unfoldAll();
    const look = async () => {
      await screen.page.evaluate(`globalThis.axe ?? (() => { ${axe.source} })()`);
      const { violations } = await screen.page.evaluate(() =>
        globalThis.axe.run(document, { runOnly: { type: "tag", values: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"] } }),
      );
      assert.deepEqual(violations.map(({ id, nodes }) => `${id}: ${nodes[0].target}`), []);
    };
    await look();
    const low = await screen.page.locator(".drawing button, .mend").evaluateAll((all) => all.filter((one) => one.getBoundingClientRect().height < 44).length);
    assert.equal(low, 0, "a target lower than 44 px");
    await screen.page.locator(".mend").first().click();
    await look();
  });
}
