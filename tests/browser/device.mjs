// The device that the page is held to: a quarter of the speed of a machine whose BenchmarkIndex, as
// Lighthouse measures it, is 2000. Chromium's developer tools take an index of 1000, twice that, for a
// phone of the middle.
//
// A machine that runs the tests may be slower by itself, or busy. So work of a known size is done beside
// the page's own: copying 100,000 integers from one list to another, fifty times, as that index does it
// (ten copies a second for each point). The device takes 10 ms for it; what the machine takes longer for
// this, it takes longer for the page too.

const SLOWER = 4;
const COPIES = 50;
const COPIES_MS = 10;

/** Slows the page down. */
export async function slowDown(page) {
  await page.evaluate((copies) => {
    const lists = [0, 1].map(() => Array.from({ length: 100_000 }, (_, place) => place));
    const copy = () => {
      const start = performance.now();
      for (let round = 0; round < copies; round += 1) {
        const [from, to] = round % 2 === 0 ? lists : [lists[1], lists[0]];
        for (let place = 0; place < from.length; place += 1) to[place] = from[place];
      }
      return performance.now() - start;
    };
    // The compiler of the browser takes its time at first.
    for (let round = 0; round < 20; round += 1) copy();
    window.copied = [];
    window.measure = () => window.copied.push(copy());
  }, COPIES);
  const client = await page.context().newCDPSession(page);
  await client.send("Emulation.setCPUThrottlingRate", { rate: SLOWER });
}

/** Does the known work, once or a few times. */
export const measure = (page, times = 1) =>
  page.evaluate(async (rounds) => {
    for (let round = 0; round < rounds; round += 1) {
      window.measure();
      await new Promise((done) => setTimeout(done));
    }
  }, times);

/** The value that a share of all lies at or below. */
export const at = (values, share) => values.toSorted((a, b) => a - b)[Math.ceil(share * values.length) - 1];

/** How much longer than the device the machine took since this was asked last, at a share of the moments. */
export async function longer(page) {
  const copied = await page.evaluate(() => window.copied.splice(0));
  return (share) => at(copied, share) / COPIES_MS;
}

/** Notes tasks over 50 ms in `window.long`, start and length in ms; to be told a page before it is opened. */
export const watchLongTasks = (page) =>
  page.addInitScript(() => {
    window.long = [];
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries()) window.long.push([entry.startTime, entry.duration]);
    }).observe({ type: "longtask" });
  });
