// A thousand seasons natively and in Chromium, and their ratio, in one run. Usage, after `make dist`:
//   node tests/browser/seasons-bench.mjs      (make bench does so)

import { execFileSync } from "node:child_process";
import { DESKTOP, onItsOwn } from "./rig.mjs";
import { EXAMPLES, Screen } from "./screen.mjs";

/** Seconds in the browser over seconds natively. */
const MOST = 2;

/** The best of three of each example, natively. */
function natively() {
  const told = execFileSync("cargo", ["bench", "--locked", "--quiet", "--no-default-features", "--bench", "season_bench", "--", "thousand"], {
    encoding: "utf8",
    stdio: ["ignore", "pipe", "inherit"],
  });
  return Object.fromEntries([...told.matchAll(/^([\w-]+) +1000 seasons ([\d.]+) s$/gm)].map(([, key, s]) => [key.replace("-", "_"), Number(s)]));
}

// Before and after the browser: the speed of a machine that others use too changes by the minute, and
// the better of two can only make the browser look slower.
const before = natively();
const browser = {};

await onItsOwn(async (t) => {
  for (const key of EXAMPLES) {
    const screen = await Screen.open(t, { viewport: DESKTOP, context: { locale: "en-GB" } });
    await screen.openExample(key);
    const client = await screen.page.context().newCDPSession(screen.page);
    // Processor time of the page's own thread: pauses between slices do not count; showing the progress
    // and the result does.
    await client.send("Performance.enable", { timeDomain: "threadTicks" });
    const script = async () =>
      (await client.send("Performance.getMetrics")).metrics.find(({ name }) => name === "ScriptDuration").value;
    // Told by the page as soon as the last season is over, not looked for.
    let over;
    await screen.page.exposeFunction("seasonsAreOver", () => over(script()));
    await screen.page.evaluate(() => {
      let under = false;
      new MutationObserver(() => {
        const text = document.querySelector("#chances > [role=status]")?.textContent ?? "";
        const now = text.includes("so far");
        if (under && !now) {
          // What would come next is not asked for: a closed fold works nothing out.
          document.querySelector("#chances").open = false;
          window.seasonsAreOver();
        }
        under = now;
      }).observe(document.querySelector("#chances"), { subtree: true, childList: true, characterData: true });
    });
    const run = async () => {
      const done = new Promise((answer) => (over = answer));
      const before = await script();
      await screen.page.locator("#chances > summary").click();
      return (await done) - before;
    };
    // The first time fetches the part; the best of so many as natively before and after.
    const times = [];
    for (let round = 0; round < 6; round += 1) times.push(await run());
    browser[key] = Math.min(...times);
  }
});

const after = natively();
const ratios = EXAMPLES.map((key) => {
  const native = Math.min(before[key], after[key]);
  const ratio = browser[key] / native;
  console.log(`${key.padEnd(16)} 1000 seasons: native ${native.toFixed(3)} s, Chromium ${browser[key].toFixed(3)} s, ratio ${ratio.toFixed(2)}`);
  return ratio;
});
const worst = Math.max(...ratios);
console.log(`largest ratio ${worst.toFixed(2)}, allowed ${MOST}`);
if (!(worst <= MOST)) process.exitCode = 1;
