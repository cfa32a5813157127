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
    // Processor time of the page's own thread: pauses between slices do not count. What runs until the
    // end is noticed (progress shown, the search for changes begun) does: an upper bound.
    await client.send("Performance.enable", { timeDomain: "threadTicks" });
    const script = async () =>
      (await client.send("Performance.getMetrics")).metrics.find(({ name }) => name === "ScriptDuration").value;
    const run = async () => {
      const before = await script();
      await screen.page.locator("#chances > summary").click();
      const status = screen.page.locator("#chances > [role=status]");
      await status.filter({ hasText: "so far" }).waitFor();
      await status.filter({ hasNotText: "so far" }).waitFor({ state: "attached", timeout: 60_000 });
      const after = await script();
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
