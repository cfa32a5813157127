// A thousand seasons natively and in Chromium, and their ratio, in one run. Usage, after `make dist`:
//   node tests/browser/seasons-bench.mjs      (make bench does so)

import { execFileSync } from "node:child_process";
import { DESKTOP, onItsOwn } from "./rig.mjs";
import { EXAMPLES, Screen } from "./screen.mjs";

/** Seconds in the browser over seconds natively. */
const MOST = 2;

const told = execFileSync("cargo", ["bench", "--locked", "--quiet", "--no-default-features", "--bench", "season_bench"], {
  encoding: "utf8",
  stdio: ["ignore", "pipe", "inherit"],
});
const native = Object.fromEntries([...told.matchAll(/^([\w-]+) +1000 seasons ([\d.]+) s$/gm)].map(([, key, s]) => [key.replace("-", "_"), Number(s)]));

await onItsOwn(async (t) => {
  let worst = 0;
  for (const key of EXAMPLES) {
    const screen = await Screen.open(t, { viewport: DESKTOP, context: { locale: "en-GB" } });
    await screen.openExample(key);
    const client = await screen.page.context().newCDPSession(screen.page);
    // Processor time of the page's own thread: pauses between slices do not count; showing the progress
    // does, and the few slices of what comes next that run until the answer is here.
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
        if (under && !now) window.seasonsAreOver();
        under = now;
      }).observe(document.querySelector("#chances"), { subtree: true, childList: true, characterData: true });
    });
    const run = async () => {
      const done = new Promise((answer) => (over = answer));
      const before = await script();
      await screen.page.locator("#chances > summary").click();
      const after = await done;
      await screen.page.locator("#chances > summary").click();
      return after - before;
    };
    // The first time fetches the part; the best of three, as natively.
    const times = [await run(), await run(), await run()];
    const best = Math.min(...times);
    worst = Math.max(worst, best / native[key]);
    console.log(`${key.padEnd(16)} 1000 seasons: native ${native[key].toFixed(3)} s, Chromium ${best.toFixed(3)} s, ratio ${(best / native[key]).toFixed(2)}`);
  }
  console.log(`largest ratio ${worst.toFixed(2)}, allowed ${MOST}`);
  if (!(worst <= MOST)) process.exitCode = 1;
});
