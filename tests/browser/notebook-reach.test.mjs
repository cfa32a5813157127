// A crop under way, within everybody's reach: on one page of paper, by keyboard alone, by finger, in both
// themes, in a narrow window; and no touch waits for the forecast.

import assert from "node:assert/strict";
import test from "node:test";
import { longer, measure, slowDown, watchLongTasks } from "./device.mjs";
import { metric, NO_FIGURE } from "./chemistry.mjs";
import { begun, NotebookScreen, READINGS, solved, withReadings } from "./notebooks.mjs";
import { dense, print } from "./print.mjs";
import { DESKTOP, PHONE } from "./rig.mjs";
import { plain } from "./screen.mjs";
import { violations } from "./violations.mjs";

test("one page of either paper holds readings, forecast and close", async (t) => {
  const screen = await withReadings(t);
  await screen.weighed();
  const sentence = await screen.sentence();
  for (const format of ["A4", "Letter"]) {
    const { pages, text } = await print(screen.page, { format });
    assert.equal(pages.length, 1, `${format}: ${pages.length} pages`);
    for (const line of [sentence, "Never above", "23.6 cm below the rim", "1.3 mS/cm", "by the plan alone"]) {
      assert.ok(dense(text).includes(dense(line)), `${format} lacks '${line}'`);
    }
    assert.doesNotMatch(text, NO_FIGURE);
    assert.doesNotMatch(text, /Add a reading|Name of this plan|Fertilizer/);
  }
  await screen.cut(38, 3, 610);
  await screen.button("Close this crop").click();
  await screen.weighed();
  const { pages, text } = await print(screen.page, { format: "Letter" });
  assert.equal(pages.length, 1);
  assert.match(plain(text), /Day 38: 3 heads, 610 g/);
  assert.match(plain(text), /What this crop taught/);
  // Left, the plan's own papers are back.
  await screen.button("Leave this notebook").click();
  assert.match((await print(screen.page)).text, /Planting card/);
});

test("by keyboard alone, and in inches and gallons", async (t) => {
  const screen = await NotebookScreen.open(t, { viewport: DESKTOP, context: { locale: "en-US" } });
  const { page } = screen;
  await screen.openExample("bucket");
  await page.locator("#notebooks").focus();
  await screen.tabTo(".notebooks button.main");
  await page.keyboard.press("Enter");
  await screen.focusMoves("notebooks");
  await screen.tabTo(".notebook button.main");
  await page.keyboard.press("Enter");
  await screen.focusMoves("reading-1-date");
  await page.keyboard.type("30");
  await screen.tabTo("#reading-1-level_cm");
  await page.keyboard.type("7");
  await screen.tabTo("#reading-1-added_l");
  await page.keyboard.type("0.5");
  // What was typed is kept, and the focus goes on from where it was.
  await page.keyboard.press("Tab");
  assert.equal(await page.evaluate(() => document.activeElement.id), "reading-1-note");
  await screen.tabTo(".reading-boxes button.main");
  await page.keyboard.press("Enter");
  await screen.focusMoves("notebook-undo");
  const [reading] = (await screen.keptNotebooks())[0].readings;
  // NIST Handbook 44, appendix C: an inch is 2.54 cm, a gallon 3.785412 L.
  assert.ok(Math.abs(reading.level_cm - 7 * 2.54) < 1e-9);
  assert.ok(Math.abs(reading.added_l - 0.5 * 3.785412) < 1e-4);
  await screen.weighed();
  assert.match((await screen.bands())["Drawn from one container"].after, /gal/);
  assert.match(plain(await page.locator("#reading-1").innerText()), /Day 30 7 in below the rim · 0\.5 gal added/);
});

for (const colorScheme of ["light", "dark"]) {
  for (const width of [320, PHONE.width, DESKTOP.width]) {
    test(`axe, targets and reflow at ${width}, ${colorScheme}`, async (t) => {
      const screen = await begun(t, { viewport: { width, height: 844 }, colorScheme, ...metric });
      const found = [];
      const look = async (state) => {
        if (await screen.overflows()) found.push(`${state}: sticks out`);
        for (const violation of await violations(screen)) found.push(`${state}: ${violation}`);
        const small = await screen.page.evaluate(() =>
          [...document.querySelectorAll(".notebooks :is(button, input:not([type=file]), select, summary)")]
            .filter((at) => at.checkVisibility() && at.getBoundingClientRect().height < 44)
            .map((at) => at.id || at.textContent),
        );
        if (small.length > 0) found.push(`${state}: below 44 px: ${small}`);
      };
      await screen.weighed();
      await look("begun");
      for (const reading of READINGS) await screen.read(reading);
      await screen.weighed();
      await look("read");
      await screen.page.locator("#reading-2").click();
      await screen.set("reading-2-level_cm", "low");
      await look("wrong");
      await screen.button("Undo the last change").click();
      await screen.cut(38, 3, 610);
      await screen.button("Close this crop").click();
      await screen.weighed();
      await screen.page.locator("#notebook-correct").click();
      await look("closed and corrected");
      await screen.button("Leave this notebook").click();
      await screen.focusMoves("notebooks");
      await look("the list");
      assert.deepEqual(found, []);
    });
  }
}

test("by finger on a phone: begun, read, topped up, closed, corrected and taken back", async (t) => {
  const screen = await NotebookScreen.open(t, { viewport: PHONE, touch: true, context: { locale: "en-GB" } });
  const { page } = screen;
  await page.locator("button.example").nth(1).tap();
  await screen.focusMoves("step-1");
  await screen.button("Begin a notebook of this plan").tap();
  await screen.focusMoves("notebooks");
  for (const [number, [day, level]] of [["20", "7"], ["30", "18"]].entries()) {
    await screen.button("Add a reading").first().tap();
    for (const [name, text] of [["date", day], ["level_cm", level]]) {
      const box = page.locator(`#reading-${number + 1}-${name}`);
      await box.tap();
      await page.keyboard.press("ControlOrMeta+a");
      await page.keyboard.type(text);
    }
    await screen.button("Done").tap();
  }
  await screen.weighed();
  assert.match(await screen.sentence(), /^At this pace the solution ends on day \d+/);
  assert.deepEqual(
    (await screen.keptNotebooks())[0].readings.map((reading) => reading.level_cm),
    [7, 18],
  );
  await screen.button("Close this crop").tap();
  await page.locator("#notebook-correct").tap();
  await page.locator("#notebook-uncorrect").tap();
  await page.locator("#notebook-correct").waitFor();
  assert.equal(await screen.overflows(), false);
});

test("no touch waits for the forecast, at a quarter of the speed; a newer reading wins", async (t) => {
  const screen = await begun(t, {
    ...metric,
    before: watchLongTasks,
  });
  for (const reading of READINGS.slice(0, 4)) await screen.read(reading);
  await screen.weighed();
  await slowDown(screen.page);
  await screen.page.locator("#reading-4").click();
  const begin = () => screen.page.evaluate(() => performance.now());
  // What is long is seen at all.
  await screen.page.evaluate(() =>
    setTimeout(() => {
      const until = performance.now() + 110;
      while (performance.now() < until);
    }),
  );
  await screen.page.waitForFunction(() => window.long.some(([, ms]) => ms >= 100));
  const weighing = screen.page.locator(".notebook .weighing");
  const level = screen.page.locator("#reading-4-level_cm");
  const edits = [await begin()];
  await level.fill("18.7");
  await level.blur();
  await weighing.filter({ hasText: /[1-9]00 seasons/ }).waitFor({ timeout: 60_000 });
  // Under way: what is typed is there at once, and what runs begins anew.
  edits.push(await begin());
  await level.fill("19.1");
  await level.blur();
  await weighing.filter({ hasText: /^0 seasons/ }).waitFor();
  await screen.weighed();
  const all = await screen.page.evaluate((from) => window.long.filter(([start]) => start > from), edits[0]);
  await measure(screen.page, 25);
  const than = await longer(screen.page);
  // On a machine that is slower than the device, or busy, a task counts as what the device takes for it.
  const long = all.filter(([, ms]) => ms / than(0.5) > 50);
  const after = long.map(([start, ms]) => [Math.round(start - edits.findLast((edit) => edit <= start)), Math.round(ms)]);
  t.diagnostic(`tasks over 50 ms, ms after an edit and how long: ${JSON.stringify(after)}`);
  // Weighing begins 400 ms after the last edit (STILL): what is long then is a slice of it. Before that the edit itself
  // is taken in and shown.
  assert.deepEqual(after.filter(([since]) => since >= 400), []);
  const outcome = await solved(await screen.download("Save this notebook to a file"));
  assert.match(await screen.sentence(), new RegExp(`on day ${outcome.solution_ends_day.middle},`));
});
