// How sure a plan is: the chances are those of the native command; an edit while seasons are lived
// through is never kept waiting; what is offered can be made and taken back by one tap each.

import assert from "node:assert/strict";
import test from "node:test";
import { longer, measure, slowDown, watchLongTasks } from "./device.mjs";
import { solved } from "./command.mjs";
import { PHONE, TABLET } from "./rig.mjs";
import { EXAMPLES, plain, Screen } from "./screen.mjs";
import { violations } from "./violations.mjs";

const GB = { locale: "en-GB" };
const SEASONS = 1000;

/** Opens the fold; the seasons begin by themselves. */
const unfold = (screen) => screen.page.locator("#chances > summary").click();

/** Waits until seasons and changes are worked out for the plan as it is. */
async function worked(screen) {
  await screen.page.waitForFunction(
    () =>
      document.querySelector("#chances .chance") &&
      !document.querySelector("#chances .stale") &&
      document.querySelector("#chances > [role=status]").textContent === "" &&
      document.querySelector("#chances .mends"),
    null,
    { timeout: 60_000 },
  );
}

const sentences = async (screen) => (await screen.page.locator("#chances .chance").allInnerTexts()).map(plain);
const offers = (screen) => screen.page.locator("#chances .mend").allInnerTexts();

for (const key of EXAMPLES) {
  test(`${key}: the chances of the page are those of the command`, async (t) => {
    const screen = await Screen.open(t, { viewport: TABLET, context: GB });
    await screen.openExample(key);
    await unfold(screen);
    await worked(screen);
    const { chances, changes } = await solved(screen, "--ensemble", String(SEASONS));
    assert.equal(chances.seasons, SEASONS);
    const [lasts, feeds] = await sentences(screen);
    assert.equal(lasts, `The solution lasts to harvest in ${chances.lasts_of_100} of 100 such seasons.`);
    assert.equal(feeds, `What is dissolved feeds the crop to harvest in ${chances.feeds_of_100} of 100.`);
    const rows = await screen.page.locator("#chances tbody tr").evaluateAll((rows) =>
      Object.fromEntries(rows.map((row) => [row.cells[0].innerText, [...row.cells].slice(1).map((cell) => cell.innerText)])),
    );
    // As shown: the command's figure to the digits that the page gives it.
    const { water_l: litres, head_g: grams } = chances;
    for (const [row, band] of [["Drawn from one container", litres], ["One head", grams]]) {
      for (const [index, name] of ["low", "middle", "high"].entries()) {
        const shown = rows[row][index].replace(/[^\d.,]/g, "").replace(",", "");
        const digits = shown.split(".")[1]?.length ?? 0;
        // Half of the last digit shown, and what rounding to even may add.
        assert.ok(Math.abs(Number(shown) - band[name]) <= 0.5 * 10 ** -digits + 1e-9, `${row}: ${rows[row]}, ${band[name]}`);
      }
    }
    assert.equal((await offers(screen)).length, changes.offered.length);
  });
}

test("a change that is offered makes it sure, and is taken back", async (t) => {
  const screen = await Screen.open(t, { viewport: PHONE, context: { ...GB, hasTouch: true } });
  await screen.openExample("bucket");
  await unfold(screen);
  await worked(screen);
  const [before] = await sentences(screen);
  const water = screen.page.locator("#chances .mends").first().locator(".mend");
  assert.ok((await water.count()) > 0, "nothing is offered");
  await water.first().tap();
  await worked(screen);
  const [after] = await sentences(screen);
  assert.ok(Number(after.match(/in (\d+) of 100/)[1]) >= 95, after);
  await screen.page.locator("#unmend").tap();
  await worked(screen);
  assert.equal((await sentences(screen))[0], before);
});

test("no edit waits for the seasons, at a quarter of the speed; a newer plan wins", async (t) => {
  const screen = await Screen.open(t, {
    viewport: TABLET,
    context: GB,
    before: watchLongTasks,
  });
  await screen.openExample("bucket");
  await slowDown(screen.page);
  await unfold(screen);
  const status = screen.page.locator("#chances > [role=status]");
  const underWay = () => status.filter({ hasText: /[1-9]00 of 1000/ }).waitFor({ timeout: 60_000 });
  const edit = async (height) => {
    await screen.field("container.height_cm").fill(height);
    await status.filter({ hasText: /^0 of 1000/ }).waitFor();
    await underWay();
  };
  await underWay();
  let slow = null;
  // What else the machine does can only make the page look slower.
  for (const [before, height] of [["35.5", "34"], ["34.5", "33"], ["33.5", "36"]]) {
    await edit(before);
    const begun = await screen.page.evaluate(() => performance.now());
    // Seasons are under way: what is typed is there at once, and what runs begins anew.
    await edit(height);
    const measured = await screen.page.evaluate(() => performance.now());
    // In the rhythm of key presses, as these are measured: a machine that rests in between is slower.
    for (let copies = 0; copies < 15; copies += 1) {
      await screen.page.waitForTimeout(150);
      await measure(screen.page);
    }
    const than = await longer(screen.page);
    const long = await screen.page.evaluate(
      (from) => window.long.filter(([start]) => start > from).map(([start, ms]) => [start - from, ms]),
      begun,
    );
    // On a machine that is slower than the device, or busy, a task counts as what the device takes for it.
    slow = long.filter(([since, ms]) => ms / than(0.5) > 50 && since < measured - begun);
    t.diagnostic(`${than(0.5).toFixed(2)} times as slow as the device; tasks over 50 ms here, ms after the edit and how long: ${JSON.stringify(long.map((task) => task.map(Math.round)))}`);
    if (slow.length === 0) break;
  }
  // Neither the edit nor a slice of the seasons that begin 400 ms after it (STILL).
  assert.deepEqual(slow, []);
});

for (const colorScheme of ["light", "dark"]) {
  test(`axe, ${colorScheme}`, async (t) => {
    const screen = await Screen.open(t, { viewport: PHONE, colorScheme, context: GB });
    await screen.openExample("bucket");
    await unfold(screen);
    await worked(screen);
    await screen.page.locator("#chances .assumed > summary").click();
    assert.deepEqual(await violations(screen), []);
    assert.equal(await screen.overflows(), false);
  });
}
