// Writes pictures of every state of the page to out/screens/, to be looked at:
//   node tests/browser/screenshots.mjs [word in the name…]

import { mkdir, rm } from "node:fs/promises";
import { join } from "node:path";
import { DESKTOP, onItsOwn, OUT, PHONE, TABLET } from "./rig.mjs";
import { NotebookScreen, READINGS } from "./notebooks.mjs";
import { EXAMPLES, Screen, STEPS } from "./screen.mjs";
import { TABLE, TANK, TrialScreen } from "./trials.mjs";

const FOLDER = join(OUT, "screens");
const WIDE = { width: 1080, height: 810 };
const wanted = process.argv.slice(2);

/** Looks down the whole page, as some of it is fetched only then, and waits until it grows no more. */
async function still(page) {
  const high = () => page.evaluate(() => document.documentElement.scrollHeight);
  await page.evaluate(() => scrollTo(0, document.documentElement.scrollHeight));
  for (let before = 0, now = await high(); now !== before; now = await high()) {
    before = now;
    await page.waitForTimeout(300);
  }
  await page.evaluate(() => scrollTo(0, 0));
}

await rm(FOLDER, { recursive: true, force: true });
await mkdir(FOLDER, { recursive: true });
let count = 0;

await onItsOwn(async (t) => {
  for (const viewport of [PHONE, TABLET, WIDE, DESKTOP]) {
    for (const colorScheme of ["light", "dark"]) {
      const screen = await Screen.open(t, { viewport, colorScheme, context: { locale: "en-GB" } });
      const shoot = async (of, state) => {
        const name = `${viewport.width}-${colorScheme}-${state}`;
        if (!wanted.every((word) => name.includes(word))) return;
        await still(of.page);
        await of.page.screenshot({ path: join(FOLDER, `${name}.png`), fullPage: true });
        count += 1;
      };
      const take = (state) => shoot(screen, state);
      await take("welcome");
      for (const key of EXAMPLES) {
        await screen.openExample(key);
        for (const step of STEPS) {
          // One example shows every step, the others their first.
          if (key !== "floating_boards" && step !== "container") continue;
          await screen.goTo(step);
          await take(`${key}-${step}`);
        }
        await screen.goTo("container");
        await screen.openMenu();
        if (key === "floating_boards") {
          await take("menu");
          await screen.chooseUnits("us");
          await screen.page.evaluate(() => {
            for (const fold of document.querySelectorAll("details")) fold.open = fold.className === "fold";
          });
          await take("us-unfolded");
          await screen.chooseUnits("metric");
          await screen.field("container.height_cm").fill("wide");
          await screen.field("container.board_count").fill("900");
          await take("problems");
          await screen.openMenu();
        }
        if (key === "bucket") {
          await screen.openMenu({ open: false });
          await screen.page.locator("#language").selectOption("es");
          await screen.page.locator("html[lang=es]").waitFor();
          await screen.settled();
          await take("es");
          await screen.goTo("fertilizer");
          await take("es-fertilizer");
          await screen.page.locator("#language").selectOption("en");
          await screen.page.locator("html[lang=en]").waitFor();
          await screen.settled();
          await screen.openMenu();
        }
        await screen.button("New plan").click();
      }
      await screen.page.locator(".plans .delete").first().click();
      await take("deleted");
      await screen.page.locator("#glossary > summary").click();
      await screen.page.locator(".chapter").first().waitFor();
      await take("glossary");

      const trial = await TrialScreen.open(t, { viewport, colorScheme, context: { locale: "en-GB" } });
      await trial.openExample("floating_boards");
      await trial.enter(TANK);
      await trial.begin();
      await trial.layOut();
      await trial.paste(TABLE);
      await trial.page.locator(".measure").first().waitFor();
      await shoot(trial, "trial");

      const notebook = await NotebookScreen.open(t, { viewport, colorScheme, context: { locale: "en-GB" } });
      await notebook.openExample("bucket");
      await notebook.begin();
      for (const reading of READINGS) await notebook.read(reading);
      await notebook.page.locator(".forecast:not(.stale)").waitFor({ timeout: 60_000 });
      await shoot(notebook, "notebook");
    }
  }
});
console.log(`${count} pictures in ${FOLDER}`);
