// The base of all page objects: opening the page, and the handles that every part of it shares.
// A page object names what a person sees and does ("the fill mark", "choose a crop"); how that is
// found in the document stays inside it, so that a test reads as a person's path.

import { launch, startServer } from "./rig.mjs";

export class Screen {
  /** @param {import("playwright-core").Page} page */
  constructor(page) {
    this.page = page;
  }

  /** Serves the built site and opens it. `options` are those of `launch`; `path` is what follows
   *  the site's own address ("#…" for a link that carries a plan); `site` is a server that the test
   *  has started already. */
  static async open(t, { path = "", site, ...options } = {}) {
    site ??= await startServer(t);
    const screen = new this(await launch(t, options));
    await screen.page.goto(new URL(path, site.url).href);
    await screen.ready();
    return screen;
  }

  /** Waits until the program runs: its loading note is gone. */
  async ready() {
    await this.page.locator("#boot").waitFor({ state: "detached" });
  }

  async reload() {
    await this.page.reload();
    await this.ready();
  }

  /** The control with this visible label. */
  field(label) {
    return this.page.getByLabel(label, { exact: true });
  }

  button(name) {
    return this.page.getByRole("button", { name, exact: true });
  }

  /** Whether the page is wider than the window, which no reader should have to scroll. */
  overflows() {
    return this.page.evaluate(() => document.documentElement.scrollWidth > window.innerWidth);
  }

  /** All the text that a person sees now. */
  text() {
    return this.page.locator("body").innerText();
  }
}
