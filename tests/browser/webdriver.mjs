// Chromium, Firefox ESR and WebKit through the one protocol that all three answer (WebDriver, W3C).
// Each `open` is a browser of its own with an empty profile. More than a person's few gestures is
// not here: whatever needs more is tested in Chromium, through rig.mjs.

import assert from "node:assert/strict";
import { spawn } from "node:child_process";
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { createServer } from "node:net";
import { homedir } from "node:os";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";

// The same day and language whatever the machine's.
const ENVIRONMENT = { ...process.env, TZ: "UTC", LANG: "en_GB.UTF-8", LANGUAGE: "en_GB" };
const ELEMENT = "element-6066-11e4-a52e-4f735466cecf";
// What a person would not wait for is a failure; the start of a browser takes longer.
const PATIENCE_MS = 15_000;
const START_MS = 60_000;

/** What drives each browser, and what it is asked for. */
export const BROWSERS = {
  chromium: (port) => ({
    command: ["chromedriver", `--port=${port}`],
    wish: {
      browserName: "chrome",
      "goog:chromeOptions": {
        binary: process.env.CHROMIUM ?? "/usr/bin/chromium",
        args: ["--headless=new", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"],
      },
      "goog:loggingPrefs": { browser: "ALL" },
    },
  }),
  firefox: (port) => ({
    command: [geckodriver(), "--port", `${port}`, "--websocket-port", "0"],
    wish: {
      browserName: "firefox",
      "moz:firefoxOptions": {
        args: ["-headless"],
        prefs: { "intl.accept_languages": "en-GB", "app.update.auto": false, "datareporting.policy.dataSubmissionEnabled": false },
      },
    },
  }),
  webkit: (port) => ({
    // MiniBrowser has no headless mode.
    command: ["xvfb-run", "-a", "-s", "-screen 0 1280x1024x24", "WebKitWebDriver", `--port=${port}`],
    wish: { browserName: "MiniBrowser", "webkitgtk:browserOptions": { binary: miniBrowser(), args: ["--automation"] } },
  }),
};

/** Where .tools/setup.sh builds it. */
function geckodriver() {
  const versions = readFileSync(new URL("../../.tools/versions", import.meta.url), "utf8");
  const cache = process.env.XDG_CACHE_HOME ?? join(homedir(), ".cache");
  const built = join(cache, "slackwater", `geckodriver-${/^GECKODRIVER=(.*)$/m.exec(versions)[1]}`, "bin", "geckodriver");
  return existsSync(built) ? built : "geckodriver";
}

/** Debian keeps it in a folder named after the machine's architecture. */
function miniBrowser() {
  const lib = "/usr/lib";
  const folders = existsSync(lib) ? readdirSync(lib).filter((name) => name.endsWith("-linux-gnu")) : [];
  const places = folders.flatMap((name) => ["4.1", "6.0"].map((version) => [name, version]));
  const found = places
    .map(([name, version]) => join(lib, name, version === "6.0" ? "webkitgtk-6.0" : `webkit2gtk-${version}`, "MiniBrowser"))
    .find(existsSync);
  return found ?? "MiniBrowser";
}

const freePort = () =>
  new Promise((done, failed) => {
    const probe = createServer().once("error", failed);
    probe.listen(0, "127.0.0.1", () => {
      const { port } = probe.address();
      probe.close(() => done(port));
    });
  });

/** Starts a browser by its key in `BROWSERS`; it ends with the test. */
export async function open(t, kind) {
  const port = await freePort();
  const { command, wish } = BROWSERS[kind](port);
  // A group of its own, so that the driver's children end with it.
  const driver = spawn(command[0], command.slice(1), { env: ENVIRONMENT, stdio: "ignore", detached: true });
  let trouble;
  driver.once("error", (error) => (trouble = error));
  driver.once("exit", (code) => (trouble ??= new Error(`${command[0]} ended with ${code}`)));
  let session;
  t.after(async () => {
    await session?.ask("DELETE", "").catch(() => {});
    if (driver.pid && driver.exitCode === null) process.kill(-driver.pid, "SIGTERM");
  });
  const address = `http://127.0.0.1:${port}`;
  const end = Date.now() + START_MS;
  for (;;) {
    if (trouble) throw new Error(`${kind} cannot be driven: ${trouble.message}. Set it up with .tools/setup.sh test`);
    if (await fetch(`${address}/status`).then((response) => response.ok, () => false)) break;
    assert.ok(Date.now() < end, `${command[0]} does not answer`);
    await pause(100);
  }
  const { sessionId } = await call("POST", `${address}/session`, { capabilities: { alwaysMatch: wish } });
  session = new Browser(`${address}/session/${sessionId}`);
  await session.ask("POST", "/window/rect", { x: 0, y: 0, width: 1280, height: 1000 });
  return session;
}

async function call(method, address, body) {
  const response = await fetch(address, {
    method,
    headers: { "content-type": "application/json" },
    body: body && JSON.stringify(body),
    signal: AbortSignal.timeout(START_MS),
  });
  const { value } = await response.json();
  if (!response.ok) throw new Error(`${value.error}: ${value.message}`);
  return value;
}

export class Browser {
  constructor(address) {
    this.address = address;
  }

  ask(method, path, body) {
    return call(method, this.address + path, body);
  }

  goTo(url) {
    return this.ask("POST", "/url", { url });
  }


  /** Runs a function in the page. It sees its arguments only. */
  run(work, ...args) {
    return this.ask("POST", "/execute/sync", { script: `return (${work}).apply(null, arguments)`, args });
  }

  /** Waits until a function in the page gives something true, and returns that. */
  async until(what, work, ...args) {
    const end = Date.now() + PATIENCE_MS;
    for (;;) {
      const found = await this.run(work, ...args);
      if (found) return found;
      assert.ok(Date.now() < end, `still not: ${what}`);
      await pause(50);
    }
  }

  /** The first element that a selector finds, once there is one. */
  async element(selector) {
    await this.until(selector, (wanted) => document.querySelector(wanted) !== null, selector);
    return (await this.ask("POST", "/element", { using: "css selector", value: selector }))[ELEMENT];
  }

  async click(selector) {
    const element = await this.element(selector);
    const end = Date.now() + PATIENCE_MS;
    for (;;) {
      // Clear of the bar at the foot of the window.
      await this.run((wanted) => document.querySelector(wanted)?.scrollIntoView({ block: "center" }), selector);
      try {
        return await this.ask("POST", `/element/${element}/click`, {});
      } catch (error) {
        // WebKit says so while the page is being laid out.
        if (!error.message.startsWith("element not interactable") || Date.now() > end) throw error;
        await pause(100);
      }
    }
  }

  /** Presses keys, one after the other, with the focus on an element. */
  async press(selector, keys) {
    await this.element(selector);
    await this.run((wanted) => document.querySelector(wanted).focus(), selector);
    const actions = keys.flatMap((value) => [
      { type: "keyDown", value },
      { type: "keyUp", value },
    ]);
    await this.ask("POST", "/actions", { actions: [{ type: "key", id: "keyboard", actions }] });
  }

  /** Types over what stands in a field, as a keyboard does; an empty field would mean something. */
  async fill(selector, text) {
    await this.element(selector);
    await this.run((wanted) => {
      const field = document.querySelector(wanted);
      field.focus();
      field.select();
    }, selector);
    await this.press(selector, [...text]);
    assert.equal(await this.run((wanted) => document.querySelector(wanted).value, selector), text, selector);
  }

  /** Text with every kind and number of white space as one plain space. */
  text(selector) {
    return this.run((wanted) => document.querySelector(wanted).innerText.replaceAll(/\s+/g, " ").trim(), selector);
  }

  /** The address of every file that the page asked for since it was opened. */
  requests() {
    return this.run(() => performance.getEntriesByType("resource").map((entry) => entry.name));
  }
}

/** Keys that have no letter. */
export const KEYS = { home: "\uE011", end: "\uE010", left: "\uE012", right: "\uE014", enter: "\uE007" };
