// How quick the page is on a cheap device: what follows a key press at a quarter of the speed, and what
// Lighthouse says of a first visit by a phone. The sizes are held by .tools/sizes.mjs.

import assert from "node:assert/strict";
import test from "node:test";
import lighthouse from "lighthouse";
import { chromium } from "playwright-core";
import { FLAGS, startServer, TABLET } from "./rig.mjs";
import { EXAMPLES, idOf, Screen } from "./screen.mjs";

const SLOWER = 4;
/** Of the key presses, as many as this have their update within LIMIT_MS. */
const QUANTILE = 0.95;
const LIMIT_MS = 50;

/** Fields of each step whose every digit makes another season. */
const FIELDS = {
  container: ["container.height_cm", "container.cover_thickness_cm", "container.pot_immersion_cm", "container.board_thickness_cm", "container.board_length_cm"],
  crop: ["crop.target_head_g", "crop.seedling_age_d", "crop.plants_per_container"],
  fertilizer: ["fertilizer.target_ec_ms_per_cm", "fertilizer.raw_water_ec_ms_per_cm", "fertilizer.crops_in_a_row"],
};

for (const example of EXAMPLES) {
  test(`a key press is answered at once, at a quarter of the speed: ${example}`, async (t) => {
    const screen = await Screen.open(t, { viewport: TABLET, context: { locale: "en-GB" } });
    await screen.openExample(example);
    const { page } = screen;
    await page.locator(".headline").waitFor();
    const client = await page.context().newCDPSession(page);
    await client.send("Emulation.setCPUThrottlingRate", { rate: SLOWER });
    // From the press to the frame that shows what came of it, as the browser itself times it, in steps of
    // 8 ms; it does not report what takes less than 16.
    await page.evaluate(() => {
      window.presses = 0;
      window.painted = [];
      addEventListener("input", () => (window.presses += 1));
      new PerformanceObserver((list) => {
        for (const { name, duration } of list.getEntries()) if (name === "input") window.painted.push(duration);
      }).observe({ type: "event", durationThreshold: 16 });
    });
    const round = async () => {
      for (const [step, paths] of Object.entries(FIELDS)) {
        await screen.goTo(step);
        for (const path of paths) {
          const field = page.locator(`#${idOf(path)}:visible`);
          if ((await field.count()) === 0) continue;
          const value = await field.inputValue();
          if (value === "") continue;
          await field.focus();
          for (let again = 0; again < 3; again += 1) {
            await page.keyboard.press("End");
            for (const key of ["Backspace", value.at(-1)]) {
              await page.keyboard.press(key);
              // A fast typist's next key; what the page does later must not be in its way.
              await page.waitForTimeout(150);
            }
          }
        }
      }
      const [presses, painted] = await page.evaluate(() => [window.presses, window.painted.splice(0)]);
      await page.evaluate(() => (window.presses = 0));
      return [...painted, ...Array(Math.max(0, presses - painted.length)).fill(8)].sort((a, b) => a - b);
    };
    const at = (sorted, share) => sorted[Math.ceil(share * sorted.length) - 1];
    let best = Infinity;
    // What else the machine does can only make the page look slower.
    for (let tries = 0; tries < 3 && best >= LIMIT_MS; tries += 1) {
      const painted = await round();
      assert.ok(painted.length >= 24, `only ${painted.length} key presses`);
      const slow = at(painted, QUANTILE);
      t.diagnostic(`${painted.length} presses: half painted within ${at(painted, 0.5)} ms, ${100 * QUANTILE} % within ${slow} ms`);
      best = Math.min(best, slow);
    }
    assert.ok(best < LIMIT_MS, `${best} ms`);
  });
}

test("Lighthouse, as a phone", async (t) => {
  const wanted = { performance: 0.95, accessibility: 1, "best-practices": 1 };
  const site = await startServer(t, { packed: true });
  const port = 9222 + (process.pid % 500);
  const browser = await chromium.launch({
    executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
    args: [...FLAGS, `--remote-debugging-port=${port}`],
    chromiumSandbox: false,
  });
  t.after(() => browser.close());
  const best = {};
  // What else the machine does can only make the page look slower.
  for (let round = 0; round < 3; round += 1) {
    const { lhr } = await lighthouse(site.url, {
      port,
      logLevel: "error",
      onlyCategories: Object.keys(wanted),
    });
    const scores = Object.fromEntries(Object.entries(lhr.categories).map(([name, { score }]) => [name, score]));
    const of = (audit) => lhr.audits[audit].displayValue;
    t.diagnostic(
      `${JSON.stringify(scores)}; first paint ${of("first-contentful-paint")}, largest ${of("largest-contentful-paint")}, blocked ${of("total-blocking-time")}, shift ${of("cumulative-layout-shift")}`,
    );
    for (const [name, score] of Object.entries(scores)) best[name] = Math.max(best[name] ?? 0, score);
    const failed = Object.values(lhr.audits).filter((audit) => audit.score === 0 && audit.scoreDisplayMode === "binary");
    for (const { id, title } of failed) t.diagnostic(`${id}: ${title}`);
    assert.equal(lhr.audits["cumulative-layout-shift"].numericValue, 0, "the layout shifts");
    if (Object.entries(wanted).every(([name, score]) => best[name] >= score)) break;
  }
  for (const [name, score] of Object.entries(wanted)) assert.ok(best[name] >= score, `${name}: ${best[name]}`);
});
