// The page arrives and starts, and the rig itself notices what it is there to notice.

import assert from "node:assert/strict";
import test from "node:test";
import { launch, PHONE, problemsOf, startServer } from "./rig.mjs";
import { print } from "./print.mjs";
import { Screen } from "./screen.mjs";

test("the page starts from below a folder, on a phone as on a desktop", async (t) => {
  const site = await startServer(t, { base: "/some/deep/folder/" });
  for (const options of [{}, { viewport: PHONE, touch: true, colorScheme: "dark" }]) {
    const screen = await Screen.open(t, { site, ...options });
    assert.equal(await screen.page.title(), "Slackwater");
    assert.doesNotMatch(await screen.text(), /is loading/);
    assert.notEqual((await screen.text()).trim(), "", "the page is empty");
  }
});

test("the page prints, on either paper", async (t) => {
  const screen = await Screen.open(t);
  for (const format of ["A4", "Letter"]) {
    const printed = await print(screen.page, { format });
    assert.ok(printed.pages.length >= 1);
    assert.notEqual(printed.pages.join("").trim(), "", "nothing is printed");
  }
});

test("a page whose program cannot be fetched says so", async (t) => {
  const site = await startServer(t);
  const page = await launch(t, { expected: [/wasm/, /Failed to load resource/, /Failed to fetch/] });
  await page.route("**/*.wasm", (route) => route.abort("connectionrefused"));
  await page.goto(site.url);
  await page.getByRole("alert").filter({ hasText: "could not be loaded" }).waitFor();
});

test("a page without JavaScript says what is missing", async (t) => {
  const site = await startServer(t);
  // Chromium then refuses the preloads too, and calls it policy.
  const page = await launch(t, { expected: [/\(csp\)$/], context: { javaScriptEnabled: false } });
  await page.goto(site.url);
  assert.match(await page.locator("body").innerText(), /JavaScript is switched off/);
});

test("the security policy keeps requests and scripts at home, and the rig sees each try", async (t) => {
  const screen = await Screen.open(t, { expected: [/./] });
  assert.deepEqual(problemsOf(screen.page), []);
  const seen = await screen.page.evaluate(async () => {
    const away = await fetch("https://elsewhere.invalid/").then(() => "sent", () => "stopped");
    const inline = document.createElement("script");
    inline.textContent = "window.inlineRan = true";
    document.head.append(inline);
    return { away, inline: window.inlineRan ?? false };
  });
  assert.deepEqual(seen, { away: "stopped", inline: false });
  const found = problemsOf(screen.page).join("\n");
  assert.match(found, /connect-src/);
  assert.match(found, /script-src/);
});

test("the rig sees uncaught errors, missing files and other hosts", async (t) => {
  const site = await startServer(t);
  const page = await launch(t, { expected: [/./] });
  // A file without the page's security policy, so that nothing stops the request to another host.
  await page.goto(new URL("worker.js", site.url).href);
  await page.evaluate(async (missing) => {
    setTimeout(() => {
      throw new Error("thrown on purpose");
    });
    await fetch(missing);
    await fetch("http://elsewhere.invalid/").catch(() => {});
  }, new URL("missing.txt", site.url).href);
  const found = problemsOf(page).join("\n");
  assert.match(found, /uncaught: thrown on purpose/);
  assert.match(found, /missing\.txt \(404\)/);
  assert.match(found, /another host: http:\/\/elsewhere\.invalid/);
});

test("the server gives out its own folder only", async (t) => {
  const site = await startServer(t, { base: "/base/" });
  const wasm = await fetch(new URL("index.html", site.url));
  assert.equal(wasm.headers.get("content-type"), "text/html; charset=utf-8");
  for (const path of ["..%2fCargo.toml", "%2e%2e/Cargo.toml", "../index.html", "%", "%00"]) {
    const answer = await fetch(`${site.url}${path}`);
    assert.equal(answer.status, 404, path);
  }
});
