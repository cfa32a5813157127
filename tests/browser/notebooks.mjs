// The page's notebooks as a person uses them, and invented readings of a crop.

import { readFile } from "node:fs/promises";
import { metric } from "./chemistry.mjs";
import { answer } from "./command.mjs";
import { plain, Screen } from "./screen.mjs";

/** Invented readings of the bucket: day, cm below the rim, mS/cm; of a crop that draws more than planned. */
export const READINGS = [
  [10, "3.2", "1.3"],
  [18, "6.1"],
  [25, "13"],
  [30, "18.9"],
  [34, "23,6"],
];

export class NotebookScreen extends Screen {
  get notebook() {
    return this.page.locator(".notebook");
  }

  async begin() {
    await this.button("Begin a notebook of this plan").click();
    await this.focusMoves("notebooks");
  }

  /** Fills a box of the notebook in and leaves it. */
  async set(id, text) {
    const box = this.page.locator(`#${id}`);
    await box.fill(text);
    await box.blur();
  }

  /** The message beside a box. */
  async says(id) {
    return plain(await this.page.locator(`#${id}-problem`).innerText());
  }

  /** Adds a reading and opens its boxes; its number. */
  async add() {
    const number = (await this.page.locator(".readings .reading-line").count()) + 1;
    await this.button("Add a reading").first().click();
    await this.page.locator(`#reading-${number}-date`).waitFor();
    return number;
  }

  async read([day, level, ec = "", added = ""]) {
    const number = await this.add();
    await this.set(`reading-${number}-date`, String(day));
    await this.set(`reading-${number}-level_cm`, level);
    if (ec) await this.set(`reading-${number}-ec_ms_per_cm`, ec);
    if (added) await this.set(`reading-${number}-added_l`, added);
    await this.button("Done").click();
  }

  async cut(day, heads, grams) {
    await this.button("Add heads that were cut").click();
    await this.set("cut-1-date", String(day));
    await this.set("cut-1-heads", String(heads));
    await this.set("cut-1-mass_g", String(grams));
  }

  /** Waits until the notebook as it is has been weighed. */
  async weighed() {
    await this.page.waitForFunction(
      () => {
        const pace = document.querySelector(".notebook .pace");
        return (
          pace &&
          !pace.classList.contains("stale") &&
          document.querySelector(".notebook .weighing").textContent === "" &&
          document.querySelector(".notebook .forecast")
        );
      },
      null,
      { timeout: 90_000 },
    );
  }

  async sentence() {
    return plain(await this.page.locator(".notebook .pace").innerText());
  }

  /** The rows of the table of bands: name to what the plan says and what the readings leave. */
  async bands() {
    const { rows } = await this.table("What comes of it now");
    return Object.fromEntries(rows.map(([name, before, after]) => [name, { before, after }]));
  }

  async download(name) {
    const waiting = this.page.waitForEvent("download");
    await this.button(name).click();
    return readFile(await (await waiting).path(), "utf8");
  }

  async keptNotebooks() {
    return (JSON.parse(await this.stored()).notebooks ?? []).map(({ notebook }) => notebook);
  }

  chooseFile(id, text, name) {
    return this.page.locator(id).setInputFiles({ name, mimeType: "text/plain", buffer: Buffer.from(text) });
  }
}

export const begun = async (t, options = metric, key = "bucket") => {
  const screen = await NotebookScreen.open(t, options);
  await screen.openExample(key);
  await screen.begin();
  return screen;
};

export async function withReadings(t, options = metric) {
  const screen = await begun(t, options);
  for (const reading of READINGS) await screen.read(reading);
  return screen;
}

/** What the native command says of a notebook document. */
export const solved = async (json) => (await answer(json, "--notebook")).notebook;
