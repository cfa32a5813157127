// What every browser test stands on: the built site on a server, a real browser, and a page that
// fails its test for any message on the console, failed request, or request to another host.
//
//   import test from "node:test";
//   import { launch, PHONE, startServer } from "./rig.mjs";
//
//   test("…", async (t) => {
//     const site = await startServer(t);
//     const page = await launch(t, { viewport: PHONE });
//     await page.goto(site.url);
//   });
//
// Both end with the test that they were started for. Tests of the page's own path start from
// `Screen.open` (screen.mjs), which does all three steps; printing is in print.mjs.

import assert from "node:assert/strict";
import { existsSync } from "node:fs";
import { join } from "node:path";
import { after } from "node:test";
import { fileURLToPath } from "node:url";
import { chromium } from "playwright-core";
import { serve } from "./serve.mjs";

/** The built site. `.tools/build.sh` writes it; `DIST` names another folder. */
export const DIST = process.env.DIST ?? fileURLToPath(new URL("../../dist/", import.meta.url));

/** Where tests may leave pictures and printed pages to look at. Not kept by git. */
export const OUT = fileURLToPath(new URL("./out/", import.meta.url));

/** The sizes that the page is made for. */
export const PHONE = { width: 390, height: 844 };
export const TABLET = { width: 810, height: 1080 };
export const DESKTOP = { width: 1440, height: 900 };

/** What every Chromium of the tests is started with. */
export const FLAGS = [
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
  // Whatever tries to leave this machine finds no host, and so shows as a failed request.
  "--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1",
];

let browser;
const problems = new WeakMap();
const cleanups = new WeakMap();

// A script that is no test would wake the test runner with this; see `onItsOwn`.
if (process.argv[1]?.endsWith(".test.mjs")) after(() => browser?.then((running) => running.close()));

/** Serves the built site, by default from below a folder, as many static hosts do.
 *  See `serve` for what can be done with the result. */
export async function startServer(t, { folder = DIST, base = "/some/folder/", packed = false } = {}) {
  assert.ok(existsSync(join(folder, "index.html")), `no page in ${folder}: build it first (make dist)`);
  const site = await serve(folder, { base, packed });
  atEnd(t, () => site.close());
  return site;
}

/** The day on which the page believes to be opened: a ready plan sown then is planted on 1 February. */
export const TODAY = Date.UTC(2027, 0, 22, 12);

/** A new page in a browser of its own profile, empty storage included.
 *
 *  - `viewport`: PHONE, TABLET, DESKTOP or `{ width, height }`
 *  - `touch`: a finger in place of a mouse
 *  - `colorScheme`: "light" or "dark"
 *  - `expected`: patterns of problems that the test provokes on purpose
 *  - `context`: further options of Playwright's `newContext` (locale, offline, javaScriptEnabled…)
 *
 *  More pages of the same profile: `page.context().newPage()`; they are watched too. */
export async function launch(t, options = {}) {
  const { viewport = DESKTOP, touch = false, colorScheme = "light", expected = [], context = {} } = options;
  const profile = await (await theBrowser()).newContext({
    viewport,
    hasTouch: touch,
    isMobile: touch,
    colorScheme,
    locale: "en-US",
    timezoneId: "UTC",
    ...context,
  });
  await profile.addInitScript((ahead) => {
    globalThis.Date = class extends Date {
      constructor(...given) {
        super(...(given.length > 0 ? given : [globalThis.Date.now()]));
      }

      static now() {
        return super.now() + ahead;
      }
    };
  }, TODAY - Date.now());
  // What a person would not wait for is a failure.
  profile.setDefaultTimeout(8000);
  const seen = [];
  watch(profile, seen);
  atEnd(t, async () => {
    await profile.close();
    const unexpected = seen.filter((problem) => !expected.some((pattern) => pattern.test(problem)));
    assert.deepEqual(unexpected, [], "the page had problems");
  });
  const page = await profile.newPage();
  problems.set(page, seen);
  return page;
}

/** What went wrong so far in the profile that `launch` opened this page in. */
export const problemsOf = (page) => problems.get(page);

/** Chromium is started once for each file of tests. `CHROMIUM` names another program than Debian's. */
function theBrowser() {
  browser ??= chromium.launch({
    executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
    args: FLAGS,
    chromiumSandbox: false,
  });
  return browser;
}

/** Runs a script that is no test, with what `launch` and `startServer` take for a test. */
export async function onItsOwn(script) {
  const ends = [];
  try {
    await script({ after: (end) => ends.push(end) });
  } finally {
    for (const end of ends) await end();
    await browser?.then((running) => running.close());
  }
}

/** Runs `cleanup` after the test, latest first: a page must not outlive by a moment the server that
 *  it still asks for its icon. The test runner's own order is the other way round. */
function atEnd(t, cleanup) {
  if (!cleanups.has(t)) {
    cleanups.set(t, []);
    t.after(async () => {
      const failures = [];
      for (const next of cleanups.get(t).reverse()) await next().catch((error) => failures.push(error));
      if (failures.length > 0) throw failures[0];
    });
  }
  cleanups.get(t).push(cleanup);
}

function watch(profile, seen) {
  profile.on("console", (message) => {
    if (["error", "warning", "assert"].includes(message.type())) seen.push(`console ${message.type()}: ${message.text()}`);
  });
  profile.on("weberror", (problem) => seen.push(`uncaught: ${problem.error().message}`));
  profile.on("request", (request) => {
    const address = new URL(request.url());
    const here = ["data:", "blob:", "about:"].includes(address.protocol) || address.hostname === "127.0.0.1";
    if (!here) seen.push(`request to another host: ${address.href}`);
  });
  profile.on("requestfailed", (request) => {
    // A page that is left while it loads gives up its requests; that is no fault.
    const reason = request.failure()?.errorText;
    if (reason !== "net::ERR_ABORTED") seen.push(`request failed: ${request.url()} (${reason})`);
  });
  profile.on("response", (response) => {
    if (response.status() >= 400) seen.push(`request failed: ${response.url()} (${response.status()})`);
  });
}
