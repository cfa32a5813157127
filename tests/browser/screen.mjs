// The page as a person uses it. Names here are what a person sees and does ("go to a step", "the
// figures"); how that is found in the document stays inside, so that a test reads as a path.

import { print } from "./print.mjs";
import { launch, startServer } from "./rig.mjs";

/** The four ready plans, by their keys, in the order of the first page. */
export const EXAMPLES = ["bottle", "bucket", "covered_tank", "floating_boards"];

/** The four steps, in order; also how the paths of their fields begin. */
export const STEPS = ["container", "crop", "fertilizer", "climate"];

/** The step whose form a field is in. How a tank is built belongs to the container. */
export const stepOf = (path) => {
  const [part] = path.split(".");
  return part === "build" ? "container" : part;
};

/** Where the page keeps its plans, and where it puts what it cannot read. */
export const STORE = "slackwater.plans";
export const ASIDE = "slackwater.set-aside";

/** The id of the control of a field, from its path in a plan ("container.height_cm"). The sign of the
 *  currency, which any text is good for, is the one entry that is no field of the check. A salt that
 *  is not on the list has its formula beside the list ("fertilizer.salts[3].salt-own"). */
export const idOf = (path) => (path === "fertilizer.currency" ? "currency" : path.replaceAll(/[.[\]]/g, "-"));

/** Text with every kind and number of white space as one plain space. */
export const plain = (text) => text.replaceAll(/\s+/g, " ").trim();

/** Opens all folds that match, those in them as well; true once everything in them is there. */
export const unfolded = (folds) => {
  const all = [...document.querySelectorAll(folds)];
  const closed = all.filter((fold) => !fold.open);
  for (const fold of closed) fold.open = true;
  return closed.length === 0 && all.every((fold) => fold.childElementCount > 1) && !document.querySelector(".waiting");
};

export class Screen {
  /** @param {import("playwright-core").Page} page */
  constructor(page) {
    this.page = page;
  }

  /** Serves the built site and opens it. `options` are those of `launch`; `path` is what follows
   *  the site's own address; `site` is a server that the test has started already; `before` is
   *  told the page before it is opened. */
  static async open(t, { path = "", site, before, ...options } = {}) {
    site ??= await startServer(t);
    const screen = new this(await launch(t, options));
    await before?.(screen.page);
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

  /** Waits until the focus has moved to the element with this id. */
  async focusMoves(id) {
    await this.page.waitForFunction((wanted) => document.activeElement?.id === wanted, id);
  }

  button(name) {
    return this.page.getByRole("button", { name, exact: true });
  }

  /** All the text that a person sees now. */
  async text() {
    return plain(await this.page.locator("body").innerText());
  }

  /** Whether the page is wider than the window, which no reader should have to scroll. */
  overflows() {
    return this.page.evaluate(() => document.scrollingElement.scrollWidth > window.innerWidth);
  }

  // The first page and the kept plans

  async openExample(key) {
    await this.page.locator("button.example").nth(EXAMPLES.indexOf(key)).click();
    await this.focusMoves("step-1");
  }

  async startOwn() {
    await this.button("Start from what I have").click();
    await this.focusMoves("step-1");
  }

  get planName() {
    return this.page.locator("#plan-name");
  }

  get menu() {
    return this.page.locator("details.menu");
  }

  /** Opens the menu of plans, or closes it. */
  async openMenu({ open = true } = {}) {
    if ((await this.menu.evaluate((menu) => menu.open)) !== open) await this.menu.locator("summary").click();
  }

  /** The names in the list of kept plans, of the menu or of the first page. */
  planList() {
    return this.page.locator(".plans .plan").allInnerTexts();
  }

  get notices() {
    return this.page.locator(".notices");
  }

  async chooseUnits(key) {
    await this.page.locator("#units").selectOption(key);
    await this.settled();
  }

  /** The stored text, character by character, or null. */
  async stored(key = STORE) {
    await this.settled();
    return this.page.evaluate((name) => localStorage.getItem(name), key);
  }

  // The forms

  async goTo(step) {
    await this.stepButton(step).click();
    await this.focusMoves(`step-${STEPS.indexOf(step) + 1}`);
  }

  stepButton(step) {
    return this.page.locator(".step-button").nth(STEPS.indexOf(step));
  }

  field(path) {
    return this.page.locator(`#${idOf(path)}`);
  }

  /** What stands beside a field: a problem, a caution or nothing. */
  problem(path) {
    return this.page.locator(`#${idOf(path)}-problem`);
  }

  /** The controls of all fields that count now, in the order of the forms:
   *  id, value, whether it is a list, and whether it takes any text at all. */
  fields() {
    return this.page.evaluate(() =>
      [...document.querySelectorAll(".forms .field :is([name], .salt :is(input, select), #currency)")].map((control) => ({
        id: control.id,
        value: control.value,
        list: control.localName === "select",
        anyText: control.id === "currency",
      })),
    );
  }

  /** Opens the folded group that a field is in, by its summary as a person would; whether there was one. */
  async unfold(path, { touch = false } = {}) {
    const fold = this.page.locator(".forms details:not([open])", { has: this.page.locator(`#${idOf(path)}`) });
    if ((await fold.count()) === 0) return false;
    const summary = fold.locator("summary");
    await (touch ? summary.tap() : summary.click());
    await this.field(path).waitFor();
    return true;
  }

  /** Fills in fields (path to text, or to the key of a choice), in this order, whichever step and group
   *  they are in. A line of the shelf that is not there yet is added. */
  async enter(entries) {
    for (const [path, text] of Object.entries(entries)) {
      const step = stepOf(path);
      if ((await this.stepButton(step).getAttribute("aria-current")) !== "step") await this.goTo(step);
      const line = Number(/\.salts\[(\d+)\]/.exec(path)?.[1] ?? 0);
      if (line > 0 && line >= (await this.shelf.count())) await this.button("Add a line").click();
      const field = this.field(path);
      await field.waitFor({ state: "attached", timeout: 2000 });
      await this.unfold(path);
      const list = await field.evaluate((control) => control.localName === "select");
      await (list ? field.selectOption(text) : field.fill(text));
    }
    await this.settled();
  }

  /** Leaves so many lines on the shelf, the first ones. */
  async shortenShelf(lines) {
    while ((await this.shelf.count()) > lines) await this.button("Remove the last line").click();
  }

  /** Presses Tab until the focus is on what `selector` names. */
  async tabTo(selector) {
    for (let stop = 0; stop < 200; stop += 1) {
      await this.page.keyboard.press("Tab");
      if (await this.page.evaluate((wanted) => document.activeElement.matches(wanted), selector)) return;
    }
    throw new Error(`Tab does not lead to ${selector}`);
  }

  /** Waits for what follows an edit once it has been painted: the kept text, the link, the papers. */
  settled() {
    return this.page.evaluate(() => {
      dispatchEvent(new Event("beforeprint")); // which waits for nothing
      return new Promise((done) => requestAnimationFrame(() => setTimeout(() => requestAnimationFrame(() => setTimeout(done)))));
    });
  }

  /** Opens every folded part of the page. */
  async unfoldAll() {
    await this.page.waitForFunction(unfolded, "details:not(.menu)", { timeout: 30_000 });
    // The chances come by and by, and bring their own buttons.
    await this.page.waitForFunction(
      () =>
        !document.querySelector("#chances") ||
        document.querySelector(".summary") ||
        (document.querySelector("#chances .mends") && !document.querySelector("#chances > [role=status]").textContent),
      null,
      { timeout: 30_000 },
    );
  }

  /** The lines of the shelf of salts. */
  get shelf() {
    return this.page.locator(".salt");
  }

  /** What stands in all fields: id to text. */
  async values() {
    return Object.fromEntries((await this.fields()).map(({ id, value }) => [id, value]));
  }

  /** Types into a field as a person does, finger or mouse first, key by key. */
  async type(path, text, { touch = false } = {}) {
    const field = this.field(path);
    // A tap becomes a click some moments after the finger has left. The focus moves before it, and the click
    // then puts the caret down: what was selected in between is selected no more.
    const clicked =
      touch && field.evaluate((box) => new Promise((done) => box.addEventListener("click", () => done(), { once: true })));
    await (touch ? field.tap() : field.click());
    await clicked;
    await this.focusMoves(idOf(path));
    // Two taps on one spot within a third of a second, which no finger makes on two fields, are a double tap:
    // then the keys that select all do not reach the box.
    if (touch) await field.selectText();
    else await this.page.keyboard.press("ControlOrMeta+a");
    if (text === "") await this.page.keyboard.press("Delete");
    else await this.page.keyboard.type(text);
  }

  // The result

  /** The four headline figures as they are read. */
  async figures() {
    const names = ["fill", "dose", "harvest", "left"];
    const texts = await Promise.all(names.map((name) => this.page.locator(`#figure-${name}`).innerText()));
    return Object.fromEntries(names.map((name, index) => [name, plain(texts[index])]));
  }

  /** Everything beside the forms as it is read, folded parts included. */
  async resultText() {
    await this.settled();
    await this.page.waitForFunction(unfolded, ".figures details:not(#chances, #chances *)");
    return plain(await this.page.locator(".figures").evaluate((figures) => figures.textContent));
  }

  /** The findings, the gravest first: how grave, and the sentence. */
  async findings() {
    await this.settled();
    // Those that passed, and good practice, are folded.
    await this.page.waitForFunction(unfolded, ".figures .fold:has(> summary):not(#chances, #building, #day-table, .working)");
    const items = await this.page.locator(".findings li").evaluateAll((all) =>
      all.map((item) => [item.querySelector("strong").textContent, item.querySelector("span").textContent]),
    );
    return items.map(([weight, text]) => ({ weight: plain(weight), text: plain(text) }));
  }

  /** A table beside the forms by its name, folded or not: its heads, and the cells of each row. */
  async table(name) {
    await this.settled();
    const fold = this.page.locator(".figures details", { has: this.page.locator("summary", { hasText: name }) });
    for (const closed of await fold.filter({ hasNot: this.page.locator("table") }).all()) {
      await closed.evaluate((details) => (details.open = true));
    }
    const found = this.page.locator(`.scroll[aria-label="${name}"] table`);
    // Some tables lie in a fold of another name.
    if ((await fold.count()) === 0 && (await found.count()) === 0) await this.resultText();
    const table = await found.evaluate((at) =>
      [...at.rows].map((row) => [...row.cells].map((cell) => cell.textContent)),
    );
    const [heads, ...rows] = table.map((row) => row.map(plain));
    return { heads, rows };
  }

  /** The events of the season: day, date and text. */
  async events() {
    await this.settled();
    const items = await this.page.locator("#season .events li").evaluateAll((all) =>
      all.map((item) => [...item.children].map((part) => part.textContent)),
    );
    return items.map(([when, text]) => {
      const [, day, date] = /^Day (\d+) · (.+)$/.exec(plain(when));
      return { day: Number(day), date, text: plain(text) };
    });
  }

  /** The list of problems over the result. */
  get summary() {
    return this.page.locator(".summary");
  }

  summaryLink(path) {
    return this.summary.locator(`a[href="#${idOf(path)}"]`);
  }

  /** The table of pipes: the cells of each row, and whether it is marked as the chosen one. */
  async pipes() {
    await this.settled();
    return this.page.locator("#pipes tbody tr").evaluateAll((rows) =>
      rows.map((row) => ({
        chosen: row.classList.contains("chosen"),
        cells: [...row.cells].map((cell) => cell.textContent.replaceAll(/\s+/g, " ").trim()),
      })),
    );
  }

  /** Chooses what is printed, and waits until it can be. */
  async choosePaper(label) {
    await this.page.getByLabel("What to print").selectOption({ label });
    await this.page.locator(".print-button:enabled").waitFor();
  }

  get day() {
    return this.page.locator("#day");
  }

  async showDay(day) {
    await this.day.fill(String(day));
  }

  /** The drawing's own coordinates, in mm: x from the middle to the right, y upwards. `perMm` is
   *  how many pixels a millimetre takes to the right and upwards. */
  async drawing() {
    await this.settled();
    return this.page.locator("#section").evaluate((section) => {
      const number = (name) => Number(section.dataset[name]);
      const pairs = (path) => {
        const numbers = path.getAttribute("d").match(/-?[\d.]+(e-?\d+)?/g).map(Number);
        return Array.from({ length: numbers.length / 2 }, (_, i) => [numbers[2 * i], numbers[2 * i + 1]]);
      };
      const box = (rect) =>
        Object.fromEntries(["x", "y", "width", "height"].map((name) => [name, Number(rect.getAttribute(name))]));
      const wall = section.querySelector(".wall");
      const matrix = wall.getScreenCTM();
      const [left, top, width, height] = section.getAttribute("viewBox").split(" ").map(Number);
      return {
        day: number("day"),
        level: number("levelMm"),
        underside: number("undersideMm"),
        rim: number("rimMm"),
        wall: pairs(wall),
        solution: box(section.querySelector(".solution")),
        covers: [...section.querySelectorAll(".cover")].map(box),
        pipes: [...section.querySelectorAll(".pipe")].map((pipe) => ({
          x: pipe.cx.baseVal.value,
          y: pipe.cy.baseVal.value,
          radius: pipe.r.baseVal.value,
        })),
        pots: section.querySelectorAll(".plant").length,
        frame: { left, right: left + width, bottom: -top - height, top: -top },
        perMm: { right: matrix.a, up: -matrix.d, skewed: matrix.b !== 0 || matrix.c !== 0 },
      };
    });
  }

  // The card

  get printButton() {
    return this.page.locator(".print-button");
  }

  /** The card's parts as written: each heading, line, table row and paragraph. */
  async cardLines() {
    await this.settled();
    const lines = await this.page
      .locator(".card :is(h2, h3, p, li, tr)")
      .evaluateAll((all) => all.map((line) => [...line.childNodes].map((part) => part.textContent)));
    return lines.map((parts) => plain(parts.join(" "))).filter((line) => line !== "");
  }

  printCard(format) {
    return print(this.page, { format });
  }
}
