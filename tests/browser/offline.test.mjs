// Without a network, and from one release to the next: the page that is on the device keeps
// working until the next one is whole, and nothing that was entered is lost.

import assert from "node:assert/strict";
import { cp, mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import test, { after } from "node:test";
import { sealPage, writeWorker } from "../../.tools/release.mjs";
import { DIST, FLAGS, launch, problemsOf, startServer } from "./rig.mjs";
import { Screen, STORE } from "./screen.mjs";

const metric = { context: { locale: "en-GB" } };
// Chromium's word for a host that is gone; the worker's own look for a newer release meets it too.
const NO_NETWORK = [/worker\.js/, /ERR_(CONNECTION|EMPTY|FAILED|INTERNET)/];

/** Waits until the open page's release is whole on the device. */
const onDevice = (page) => page.evaluate(() => navigator.serviceWorker.ready.then(() => true));
const stores = (page) => page.evaluate(() => caches.keys());
const lookForUpdate = (page) =>
  page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    return registration.update().then(() => "looked", (error) => error.name);
  });

/** A folder that is gone in the end: pages may still be fetching from it while their test ends. */
async function folder() {
  folders.push(await mkdtemp(join(tmpdir(), "slackwater-release-")));
  return folders.at(-1);
}
const folders = [];
after(() => Promise.all(folders.map((made) => rm(made, { recursive: true, force: true }))));

/** The built site as a later release: its title tells, and its program is another file. */
async function nextRelease({ title = "Slackwater B" } = {}) {
  const next = await folder();
  await cp(DIST, next, { recursive: true });
  const names = await readdir(next);
  const wasm = names.find((name) => name.endsWith("_bg.wasm"));
  const renamed = `next-${wasm}`;
  await cp(join(next, wasm), join(next, renamed));
  await rm(join(next, wasm));
  const page = join(next, "index.html");
  const text = (await readFile(page, "utf8")).replace("<title>Slackwater<", `<title>${title}<`).replace(`data-wasm="${wasm}"`, `data-wasm="${renamed}"`);
  await writeFile(page, text);
  writeWorker(next);
  return { next, renamed };
}

const changeButton = (screen) => screen.page.locator("#update");

test("a cold start without a network, from below a folder, with the browser's own cache off", async (t) => {
  const { chromium } = await import("playwright-core");
  const profile = await folder();
  const site = await startServer(t, { base: "/some/deep/folder/" });
  const start = () =>
    chromium.launchPersistentContext(profile, {
      executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
      args: [...FLAGS, "--disk-cache-size=1", "--disable-http-cache"],
      chromiumSandbox: false,
      locale: "en-GB",
    });
  let browser = await start();
  let screen = new Screen(browser.pages()[0]);
  await screen.page.goto(site.url);
  await screen.ready();
  await screen.openExample("floating_boards");
  await screen.planName.fill("Kept without a network");
  const [figures, kept] = [await screen.figures(), await screen.stored(STORE)];
  await onDevice(screen.page);
  await browser.close();

  await site.close();
  await assert.rejects(fetch(site.url), "the host still answers");
  browser = await start();
  t.after(() => browser.close());
  screen = new Screen(browser.pages()[0]);
  for (const path of ["", "index.html", "?from=home#anything"]) {
    await screen.page.goto(site.url + path);
    await screen.ready();
    assert.deepEqual(await screen.figures(), figures);
    assert.equal(await screen.planName.inputValue(), "Kept without a network");
    assert.equal(await screen.stored(STORE), kept);
  }
  // Full function: what is entered counts, is kept, and a new plan can be begun.
  await screen.field("container.board_count").fill("6");
  assert.notDeepEqual(await screen.figures(), figures);
  await screen.reload();
  assert.equal(await screen.field("container.board_count").inputValue(), "6");
});

test("a newer release waits, is offered in each tab, and is taken by the tab that asks, with nothing lost", async (t) => {
  const site = await startServer(t);
  const screen = await Screen.open(t, { site, ...metric });
  await onDevice(screen.page);
  await screen.reload();
  await screen.openExample("bucket");
  const [before] = await stores(screen.page);
  const other = new Screen(await screen.page.context().newPage());
  await other.page.goto(site.url);
  await other.ready();

  const { next } = await nextRelease();
  site.folder = next;
  assert.equal(await changeButton(screen).count(), 0);
  await lookForUpdate(screen.page);
  await changeButton(screen).waitFor();
  await changeButton(other).waitFor();
  assert.equal((await stores(screen.page)).length, 2, "the old release's store must stay while it is in use");

  // The old one goes on, across a reload and with the offer still there.
  await screen.field("container.height_cm").fill("half ty");
  await screen.reload();
  assert.equal(await screen.page.title(), "Slackwater");
  assert.equal(await screen.field("container.height_cm").inputValue(), "half ty");
  await changeButton(screen).waitFor();

  await other.page.evaluate(() => (window.untouched = true));
  await screen.page.evaluate(() => (window.untouched = true));
  await screen.field("container.height_cm").fill("36");
  await changeButton(screen).click();
  await screen.page.waitForFunction(() => document.title === "Slackwater B");
  await screen.ready();
  assert.equal(await screen.field("container.height_cm").inputValue(), "36");
  assert.equal(await changeButton(screen).count(), 0);
  const after = await stores(screen.page);
  assert.equal(after.length, 1);
  assert.notEqual(after[0], before);
  assert.ok(await other.page.evaluate(() => window.untouched), "the other tab was loaded anew unasked");
  assert.equal(await other.page.title(), "Slackwater");

  // Whole: it opens without a host.
  site.answers = false;
  problemsOf(screen.page).length = 0;
  await screen.reload();
  assert.equal(await screen.page.title(), "Slackwater B");
  // What the look for a newer release met on its way is no fault of the page.
  const found = problemsOf(screen.page).filter((problem) => !NO_NETWORK.some((pattern) => pattern.test(problem)));
  assert.deepEqual(found, []);
  problemsOf(screen.page).length = 0;
});

const halfReleases = {
  "whose program is missing": async ({ next, renamed }) => rm(join(next, renamed)),
  "whose program is another one": async ({ next, renamed }) => {
    const bytes = await readFile(join(next, renamed));
    bytes[bytes.length - 1] ^= 1;
    await writeFile(join(next, renamed), bytes);
  },
  "whose page is still the old one": async ({ next }) => cp(join(DIST, "index.html"), join(next, "index.html")),
};

for (const [how, spoil] of Object.entries(halfReleases)) {
  test(`a release ${how} leaves the old one working`, async (t) => {
    const site = await startServer(t);
    const screen = await Screen.open(t, { site, ...metric, expected: [/next-/, /worker\.js/, /404/, /integrity/i, ...NO_NETWORK] });
    await onDevice(screen.page);
    await screen.reload();
    await screen.openExample("bottle");
    const [figures, before] = [await screen.figures(), await stores(screen.page)];

    const release = await nextRelease();
    const whole = await folder();
    await cp(release.next, whole, { recursive: true });
    await spoil(release);
    site.folder = release.next;
    await lookForUpdate(screen.page);
    // The attempt ends without anything waiting.
    await screen.page.waitForFunction(async () => {
      const registration = await navigator.serviceWorker.ready;
      return !registration.installing && !registration.waiting;
    });
    assert.deepEqual(await stores(screen.page), before);
    await screen.reload();
    assert.equal(await screen.page.title(), "Slackwater");
    assert.deepEqual(await screen.figures(), figures);
    assert.equal(await changeButton(screen).count(), 0);
    site.answers = false;
    await screen.reload();
    assert.deepEqual(await screen.figures(), figures);

    // Once it is whole, it is offered.
    site.answers = true;
    site.folder = whole;
    await lookForUpdate(screen.page);
    await changeButton(screen).click();
    await screen.page.waitForFunction(() => document.title === "Slackwater B");
    await screen.ready();
    assert.deepEqual(await screen.figures(), figures);
  });
}

test("stores of the site's neighbours stay untouched", async (t) => {
  const site = await startServer(t);
  const screen = await Screen.open(t, { site, ...metric });
  const foreign = ["slackwater http://127.0.0.1/elsewhere/ 1", "something else"];
  await screen.page.evaluate((names) => Promise.all(names.map((name) => caches.open(name))), foreign);
  await onDevice(screen.page);
  site.folder = (await nextRelease()).next;
  await lookForUpdate(screen.page);
  await screen.page.waitForFunction(async () => {
    const { installing, waiting } = await navigator.serviceWorker.ready;
    const names = (await caches.keys()).filter((name) => name.includes(location.href));
    return !installing && !waiting && names.length === 1;
  });
  const names = await stores(screen.page);
  for (const name of foreign) assert.ok(names.includes(name), name);
});

test("no release is offered where loading anew would lose the plan", async (t) => {
  const site = await startServer(t);
  const screen = await Screen.open(t, {
    site,
    ...metric,
    before: (page) =>
      page.addInitScript(() => {
        Storage.prototype.setItem = () => {
          throw new DOMException("The quota has been exceeded.", "QuotaExceededError");
        };
      }),
  });
  await onDevice(screen.page);
  await screen.reload();
  await screen.openExample("bucket");
  site.folder = (await nextRelease()).next;
  await lookForUpdate(screen.page);
  await screen.page.waitForFunction(async () => (await navigator.serviceWorker.ready).waiting?.state === "installed");
  assert.match(await screen.notices.innerText(), /does not keep plans/);
  assert.equal(await changeButton(screen).count(), 0);
});

test("every file is held to its hash, and the page refuses a program of another release", async (t) => {
  const text = await readFile(join(DIST, "index.html"), "utf8");
  for (const [tag] of text.matchAll(/<(script|link rel="(stylesheet|modulepreload|icon)")[^>]*>/g)) {
    assert.match(tag, /integrity="sha384-[\w+/=]{64}"/, tag);
  }
  assert.match(text, /data-wasm-integrity="sha384-/);
  const { next, renamed } = await nextRelease();
  const bytes = await readFile(join(next, renamed));
  bytes[bytes.length - 1] ^= 1;
  await writeFile(join(next, renamed), bytes);
  const site = await startServer(t, { folder: next });
  const page = await launch(t, { expected: [/integrity/i, /Failed to fetch/, /next-/] });
  await page.goto(site.url);
  await page.getByRole("alert").filter({ hasText: "could not be loaded" }).waitFor();
  await page.getByRole("button", { name: "Try again" }).waitFor();
});

test("a page whose script never arrives says so after a while", async (t) => {
  const site = await startServer(t);
  const page = await launch(t, { expected: [/boot-/, /ERR_/] });
  await page.clock.install();
  await page.route("**/boot-*.js", (route) => route.abort("connectionrefused"));
  await page.goto(site.url);
  const late = page.locator("#boot .late");
  assert.ok(await late.isHidden());
  // As if the while were over: the animation is the browser's own, and runs without any script.
  await late.evaluate((note) => note.getAnimations()[0].finish());
  assert.ok(await late.isVisible());
  assert.match(await late.innerText(), /reload the page/);
});

test("a browser that keeps no worker runs the page with a network", async (t) => {
  const screen = await Screen.open(t, {
    ...metric,
    before: (page) =>
      page.addInitScript(() => {
        ServiceWorkerContainer.prototype.register = () => Promise.reject(new DOMException("Refused.", "SecurityError"));
      }),
  });
  await screen.openExample("bottle");
  assert.match((await screen.figures()).fill, /below the rim/);
});

test("from below a folder: no word on the console, nothing asked of another host", async (t) => {
  const site = await startServer(t, { base: "/a/b/" });
  const said = [];
  const asked = [];
  const screen = await Screen.open(t, {
    site,
    ...metric,
    before: (page) => {
      // Any message at all, the quiet kinds too.
      page.context().on("console", (message) => said.push(`${message.type()}: ${message.text()}`));
      page.context().on("request", (request) => asked.push(request.url()));
    },
  });
  for (const key of ["bottle", "floating_boards"]) {
    await screen.openExample(key);
    await screen.printCard("A4");
    await screen.openMenu();
    await screen.button("New plan").click();
  }
  await onDevice(screen.page);
  await screen.reload();
  // Chromium complains of a preload some seconds after it was not used.
  await screen.page.waitForTimeout(5000);
  assert.deepEqual(said, []);
  assert.ok(asked.length > 10 && asked.some((url) => url.endsWith("worker.js")));
  assert.deepEqual(asked.filter((url) => !url.startsWith(site.url) && !url.startsWith("data:")), []);
});

test("the page can be installed", async (t) => {
  const site = await startServer(t);
  const screen = await Screen.open(t, { site });
  await onDevice(screen.page);
  await screen.reload();
  const tools = await screen.page.context().newCDPSession(screen.page);
  const { errors, data, url } = await tools.send("Page.getAppManifest");
  assert.deepEqual(errors, []);
  assert.equal(url, new URL("manifest.webmanifest", site.url).href);
  const manifest = JSON.parse(data);
  for (const key of ["start_url", "scope", "id"]) assert.equal(new URL(manifest[key], url).href, site.url, key);
  for (const { src, sizes } of manifest.icons) {
    const size = await screen.page.evaluate(async (address) => {
      const image = new Image();
      image.src = address;
      await image.decode();
      return `${image.naturalWidth}x${image.naturalHeight}`;
    }, new URL(src, url).href);
    assert.equal(size, sizes, src);
  }
  assert.ok(manifest.icons.some((icon) => icon.purpose === "maskable"));
  const { installabilityErrors } = await tools.send("Page.getInstallabilityErrors");
  // The test's window is a private one, in which nothing can be installed.
  assert.deepEqual(installabilityErrors.map((error) => error.errorId).filter((id) => id !== "in-incognito"), []);
});

test("the list of files is whole, and a file that changes changes the generation", async (t) => {
  const listed = async (at) => {
    const [first] = (await readFile(join(at, "worker.js"), "utf8")).split("\n");
    return JSON.parse(/^const RELEASE = (.*);$/.exec(first)[1]);
  };
  const built = await listed(DIST);
  const there = (await readdir(DIST)).filter((name) => name !== "worker.js" && name !== "index.html");
  assert.deepEqual(Object.keys(built.files).sort(), ["./", ...there].sort());
  const copy = await folder();
  await cp(DIST, copy, { recursive: true });
  writeWorker(copy);
  assert.deepEqual(await listed(copy), built, "the same files are the same generation");
  await writeFile(join(copy, "icon-192.png"), "another");
  writeWorker(copy);
  assert.notEqual((await listed(copy)).generation, built.generation);
  // A page that is not as the build expects stops the build.
  assert.throws(() => sealPage(copy));
});
