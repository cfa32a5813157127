// How quick the page is on a cheap device: what follows a key press at a quarter of the speed, and what
// Lighthouse says of a first visit by a phone. The sizes are held by .tools/sizes.mjs.

import assert from "node:assert/strict";
import test from "node:test";
import lighthouse from "lighthouse";
import { chromium } from "playwright-core";
import { at, longer, measure, slowDown } from "./device.mjs";
import { FLAGS, startServer, TABLET } from "./rig.mjs";
import { EXAMPLES, Screen, STEPS } from "./screen.mjs";

/** Of the key presses, as many as this have their update within LIMIT_MS. */
const QUANTILE = 0.95;
const LIMIT_MS = 50;
/** From here on people feel that they wait (the RAIL model: an answer within 100 ms). */
const HELD_UP_MS = 100;

for (const example of EXAMPLES) {
  test(`a key press is answered at once, at a quarter of the speed: ${example}`, async (t) => {
    const screen = await Screen.open(t, { viewport: TABLET, context: { locale: "en-GB" } });
    await screen.openExample(example);
    const { page } = screen;
    await page.locator(".headline").waitFor();
    const client = await page.context().newCDPSession(page);
    await slowDown(page);
    // As the browser itself times it: from the press until the season was lived through anew and its
    // figures stand in the document; until the frame that shows them, in steps of 8 ms; and tasks of
    // 50 ms and more, whatever they do. It does not report an event that takes less than 16 ms.
    await page.evaluate(() => {
      window.seen = { presses: 0, done: [], painted: [], long: [] };
      addEventListener("input", () => (window.seen.presses += 1));
      new PerformanceObserver((list) => {
        for (const { name, duration, startTime, processingEnd } of list.getEntries()) {
          if (name !== "input") continue;
          window.seen.done.push(processingEnd - startTime);
          window.seen.painted.push(duration);
        }
      }).observe({ type: "event", durationThreshold: 16 });
      new PerformanceObserver((list) => {
        for (const { duration } of list.getEntries()) window.seen.long.push(Math.round(duration));
      }).observe({ type: "longtask" });
    });
    const round = async () => {
      for (const step of STEPS) {
        await screen.goTo(step);
        // The last digit of every field, away and back.
        for (const field of await page.locator(".step:not([hidden]) .field input[type=text]:visible").all()) {
          const value = await field.inputValue();
          if (value === "") continue;
          await field.focus();
          await page.keyboard.press("End");
          for (const key of ["Backspace", value.at(-1)]) {
            await page.keyboard.press(key);
            // A fast typist's next key; what the page does later must not be in its way.
            await page.waitForTimeout(150);
            await measure(page);
          }
        }
      }
      return page.evaluate(() => {
        const { seen } = window;
        window.seen = { presses: 0, done: [], painted: [], long: [] };
        return seen;
      });
    };
    let best = Infinity;
    // What else the machine does can only make the page look slower.
    for (let tries = 0; tries < 3 && best >= LIMIT_MS; tries += 1) {
      const { presses, done, painted, long } = await round();
      assert.ok(presses >= 24, `only ${presses} key presses`);
      // An event that is not reported took less than 16 ms.
      const all = (times) => [...times, ...Array(Math.max(0, presses - times.length)).fill(8)];
      const than = await longer(page);
      const told = (times, share) => Math.round(at(all(times), share) / than(share));
      const tasks = long.map((ms) => Math.round(ms / than(0.5)));
      const slow = told(done, QUANTILE);
      const held = tasks.filter((ms) => ms >= HELD_UP_MS).length;
      t.diagnostic(
        `this machine took ${than(0.5).toFixed(2)} times as long as the device for half of the copies, ${than(QUANTILE).toFixed(2)} for ${100 * QUANTILE} %; on the device, ${presses} presses: done within ${told(done, 0.5)} ms for half, ${told(done, QUANTILE)} ms for ${100 * QUANTILE} %; painted within ${told(painted, 0.5)} and ${told(painted, QUANTILE)} ms; tasks over ${LIMIT_MS} ms: ${tasks.filter((ms) => ms > LIMIT_MS).join(", ") || "none"}`,
      );
      // What follows a press (drawing, lists) may not hold the next one up, but for one in twenty.
      best = Math.min(best, held > (1 - QUANTILE) * presses ? Math.max(...tasks) : slow);
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
