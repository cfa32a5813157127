// The page's trials as a person uses them, and invented records of one.

import { readFile } from "node:fs/promises";
import { metric } from "./chemistry.mjs";
import { plain, Screen } from "./screen.mjs";

/** A tank with one board of four heads. */
export const TANK = {
  "container.length_cm": "64",
  "container.width_cm": "44",
  "container.board_length_cm": "60",
  "container.board_width_cm": "40",
  "container.board_count": "1",
};

/** Invented records: litres, then four heads in grams, of containers 1 to 12. */
export const RECORDS = [
  [8.4, 163, 171, 150, 139],
  [10.8, 213, 180, 179, 207],
  [11.5, 230, 215, 213, 253],
  [9.4, 161, 178, null, 172],
  [8.6, 166, 171, 159, 131],
  [10, 182, 163, 184, 173],
  [9.5, 171, 184, 154, 168],
  [9.1, 182, 178, 162, 184],
  [10.6, 195, 212, 202, 215],
  [10.3, 196, 216, 207, 200],
  [9.2, 175, null, 163, 176],
  [10.8, 208, 208, 197, 191],
];
export const TABLE = [
  "unit\twater_l\thead_1_g\thead_2_g\thead_3_g\thead_4_g",
  ...RECORDS.map((line, place) => [place + 1, ...line.map((value) => value ?? "NA")].join("\t")),
].join("\n");

export class TrialScreen extends Screen {
  get trial() {
    return this.page.locator(".trial");
  }

  async begin() {
    await this.button("Begin a trial of this plan").click();
    await this.focusMoves("trials");
  }

  /** Fills a box of the trial in and leaves it. */
  async set(id, text) {
    const box = this.page.locator(`#${id}`);
    await box.fill(text);
    await box.blur();
  }

  async paste(text) {
    await this.set("trial-paste", text);
    await this.button("Take in this table").click();
    return plain(await this.page.locator(".taken-in").innerText());
  }

  /** Three pipe sizes in four blocks. */
  async layOut() {
    await this.page.locator("#trial-differs").selectOption("0");
    for (const [place, key] of ["metric_75", "metric_90", "metric_110"].entries()) {
      await this.page.locator(`#variant-value-${place + 1}`).selectOption(key);
    }
    await this.set("trial-seed", "2027");
  }

  /** The containers of the drawing: number, letter, name and block. */
  bench() {
    return this.page.locator(".trial .bench-plan g").evaluateAll((all) =>
      all.map((cell) => {
        const [number, letter, name, block] = [...cell.querySelectorAll("text")].map((text) => text.textContent);
        return { number, letter, name, block };
      }),
    );
  }

  /** What is said of a measure: the sentences in the frame under its heading. */
  async verdict(name) {
    const measure = this.page.locator(".trial .measure", { has: this.page.getByRole("heading", { name, exact: true }) });
    return plain(await measure.locator(".verdict").innerText());
  }

  async file() {
    const waiting = this.page.waitForEvent("download");
    await this.button("Save this trial to a file").click();
    return readFile(await (await waiting).path(), "utf8");
  }

  async choosePaper(label) {
    await this.page.locator("#trial-paper").selectOption({ label });
  }
}

export const begun = async (t, options = metric) => {
  const screen = await TrialScreen.open(t, options);
  await screen.openExample("floating_boards");
  await screen.enter(TANK);
  await screen.begin();
  return screen;
};
