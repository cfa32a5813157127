// In the reader's own language and units: chosen, remembered, carried by links, complete, and never
// touching the plan.

import assert from "node:assert/strict";
import test from "node:test";
import { clipped, inSpanish, languagesOf, markedSite, unmarked } from "./languages.mjs";
import { print } from "./print.mjs";
import { DESKTOP, launch, PHONE, startServer } from "./rig.mjs";
import { EXAMPLES, Screen, STEPS, STORE } from "./screen.mjs";
import { NotebookScreen, READINGS } from "./notebooks.mjs";
import { SYSTEMS } from "./systems.mjs";
import { TABLE, TANK, TrialScreen } from "./trials.mjs";
import { violations } from "./violations.mjs";

const NARROW = { width: 320, height: 800 };
const SPANISH = { context: { locale: "es-ES" } };

/** What the browser keeps of the open plan, but its name, which is the grower's own text. */
async function keptPlan(screen) {
  const store = JSON.parse(await screen.stored());
  const { plan } = store.plans.find(({ id }) => id === store.open);
  return { ...plan, name: "" };
}

const language = (screen) => screen.page.evaluate(() => document.documentElement.lang);

/** Back to the first page, whatever the language. */
async function newPlan(screen) {
  await screen.page.locator("#plans").click();
  await screen.page.locator(".menu .sheet > .row button").first().click();
}

async function speak(screen, key) {
  await screen.page.locator("#language").selectOption(key);
  await screen.page.waitForFunction((wanted) => document.documentElement.lang === wanted, key);
  await screen.settled();
}

test("the browser's first language that the page speaks is spoken, and another is remembered", async (t) => {
  for (const [locale, spoken, units] of [
    ["es-MX", "es", "metric"],
    ["es-US", "es", "us"],
    ["en-GB", "en", "metric"],
    ["de-DE", "en", "metric"],
  ]) {
    const screen = await Screen.open(t, { context: { locale } });
    assert.equal(await language(screen), spoken, locale);
    assert.equal(await screen.page.locator("#units").inputValue(), units, locale);
    assert.equal(await screen.page.locator("#language").inputValue(), spoken, locale);
  }
  const screen = await Screen.open(t, { context: { locale: "en-GB" } });
  await speak(screen, "es");
  assert.match(await screen.text(), /¿Qué quiere planificar\?|¿/);
  await screen.reload();
  assert.equal(await language(screen), "es");
  await speak(screen, "en");
  await screen.reload();
  assert.equal(await language(screen), "en");
});

test("the same entries make the same plan in both languages and both systems of units, card included", async (t) => {
  // A typed unit always wins, so these mean the same wherever they are typed.
  const unitOf = [[/(?<!_per)_cm$/, "cm"], [/_volume_l$/, "L"], [/_g$/, "g"], [/_c$/, "°C"], [/elevation_m$/, "m"], [/price_per_kg$/, "/kg"], [/price_per_m$/, "/m"], [/price_per_m2$/, "/m²"]];
  const withUnit = (path, text) => `${text} ${unitOf.find(([pattern]) => pattern.test(path) && /^[\d.,]+$/.test(text))?.[1] ?? ""}`.trim();
  const plans = [];
  for (const key of ["en", "es"]) {
    for (const units of ["metric", "us"]) {
      const screen = await Screen.open(t, { viewport: PHONE, touch: true, context: { locale: "en-GB" } });
      await speak(screen, key);
      await screen.chooseUnits(units);
      await screen.openExample("bucket");
      for (const [path, { enter: text }] of Object.entries(SYSTEMS.bucket)) {
        const step = path.split(".")[0] === "build" ? "container" : path.split(".")[0];
        if ((await screen.stepButton(step).getAttribute("aria-current")) !== "step") await screen.goTo(step);
        await screen.unfold(path);
        const list = await screen.field(path).evaluate((control) => control.localName === "select");
        await (list ? screen.field(path).selectOption(text) : screen.field(path).fill(withUnit(path, text)));
      }
      await screen.settled();
      assert.equal(await screen.summary.count(), 0, (await screen.summary.allInnerTexts()).join());
      plans.push(await keptPlan(screen));
      const card = await screen.printCard("A4");
      assert.match(card.text, key === "es" ? /Llene|Llenar/ : /Fill/);
      assert.match(card.text, units === "us" ? /\b(in|pulg)\b/ : /\bcm\b/);
    }
  }
  for (const plan of plans) assert.deepEqual(plan, plans[0]);
});

test("switching language and units with everything open changes no bit of the plan", async (t) => {
  const screen = await Screen.open(t, { viewport: DESKTOP, context: { locale: "en-GB" } });
  for (const key of EXAMPLES) {
    await screen.openExample(key);
    const kept = async () => (await screen.stored()).replace(/,"units":"[^"]*"/, "");
    const before = await kept();
    const plan = await keptPlan(screen);
    await screen.unfoldAll();
    for (const [to, units] of [["es", "metric"], ["es", "us"], ["en", "us"], ["en", "metric"]]) {
      await speak(screen, to);
      await screen.chooseUnits(units);
      assert.deepEqual(await keptPlan(screen), plan, `${key} ${to} ${units}`);
    }
    assert.equal(await kept(), before);
    await newPlan(screen);
  }
});

test("a link made in one language and system opens in the reader's own, with the same plan", async (t) => {
  const site = await startServer(t);
  const maker = await Screen.open(t, { site, context: { locale: "es-US" } });
  await maker.openExample("floating_boards");
  await maker.settled();
  const link = await maker.page.locator("#link").inputValue();
  assert.match(link, /#P-[A-Z0-9]+\.ES$/);
  const made = await keptPlan(maker);
  for (const [locale, spoken, units] of [
    ["en-GB", "en", "metric"],
    ["es-ES", "es", "metric"],
    ["en-US", "en", "us"],
    // Of a language that the page does not speak, the link's is the better guess.
    ["fr-FR", "es", "metric"],
  ]) {
    const reader = await Screen.open(t, { site, path: `#${link.split("#")[1]}`, context: { locale } });
    assert.equal(await language(reader), spoken, locale);
    await reader.page.locator("[aria-labelledby=brought] button.main").click();
    await reader.focusMoves("step-1");
    assert.equal(await reader.page.locator("#units").inputValue(), units, locale);
    assert.deepEqual(await keptPlan(reader), made, locale);
  }
});

test("a decimal comma is typed and shown where the reader's region has one, before three digits too", async (t) => {
  const screen = await Screen.open(t, SPANISH);
  await screen.openExample("bucket");
  await screen.goTo("fertilizer");
  await screen.type("fertilizer.target_ec_ms_per_cm", "1,275");
  assert.equal(await screen.problem("fertilizer.target_ec_ms_per_cm").innerText(), "");
  assert.equal((await keptPlan(screen)).fertilizer.target_ec_ms_per_cm, 1.275);
  await screen.page.keyboard.press("Tab");
  assert.equal(await screen.field("fertilizer.target_ec_ms_per_cm").inputValue(), "1,275");
  await screen.unfoldAll();
  const wrong = (await screen.text()).match(/.{20}\d\.\d.{20}/g) ?? [];
  assert.deepEqual(wrong, [], "numbers with a point");
  const mexican = await Screen.open(t, { context: { locale: "es-MX" } });
  await mexican.openExample("bucket");
  assert.match((await mexican.figures()).fill, /^\d+\.\d cm/);
});

test("every text that is read or heard is a text of the language", async (t) => {
  const site = await markedSite(t);
  const page = await launch(t, { viewport: DESKTOP, context: { locale: "en-GB" }, expected: [/404/] });
  const screen = new Screen(page);
  await page.goto(site.url);
  await screen.ready();
  const own = ["old"];
  const look = async (state) => assert.deepEqual(await unmarked(page, own), [], state);
  await look("first page");
  for (const key of EXAMPLES) {
    await screen.openExample(key);
    own.push(await screen.planName.inputValue());
    await screen.unfoldAll();
    await look(key);
    for (const step of STEPS) {
      await screen.goTo(step);
      await screen.unfoldAll();
      await look(`${key}, ${step}`);
    }
    await screen.goTo("container");
    await screen.chooseUnits("us");
    await look(`${key}, in inches`);
    await screen.chooseUnits("metric");
    for (const paper of await page.locator("#what-to-print option").evaluateAll((all) => all.map(({ value }) => value))) {
      await page.locator("#what-to-print").selectOption(paper);
      await page.locator(".print-button:enabled").waitFor();
      await screen.settled();
      await look(`${key}, paper ${paper}`);
    }
    await screen.goTo("crop");
    await screen.field("crop.seedling_age_days").fill("old");
    await screen.settled();
    await look(`${key}, with a problem`);
    await newPlan(screen);
  }
  await screen.unfoldAll();
  await look("all plans, glossary");
});

/** The same buttons under their marked names. */
const marked = (screen) => {
  screen.button = (name) => screen.page.getByRole("button", { name: `⟦${name}⟧`, exact: true });
  return screen;
};

test("every text of a trial and of a notebook is a text of the language", async (t) => {
  const site = await markedSite(t);
  const options = { viewport: DESKTOP, context: { locale: "en-GB" }, expected: [/404/] };
  // The letters of honest differences are no words.
  const own = [/^[abc]{1,3}$/g, "wet"];
  const look = async (screen, state) =>
    assert.deepEqual(await unmarked(screen.page, [...own, await screen.planName.inputValue().catch(() => "")]), [], state);

  const trial = marked(await TrialScreen.open(t, { site, ...options }));
  await trial.openExample("floating_boards");
  own.push(await trial.planName.inputValue());
  await trial.enter(TANK);
  await trial.begin();
  await look(trial, "a new trial");
  await trial.layOut();
  await look(trial, "laid out");
  await trial.set("trial-paste", TABLE);
  await trial.button("Take in this table").click();
  await trial.page.locator(".measure").first().waitFor();
  await trial.unfoldAll();
  await look(trial, "judged");
  await trial.set("record-1-1", "wet");
  await trial.settled();
  await look(trial, "with a problem");

  const notebook = marked(await NotebookScreen.open(t, { site, ...options }));
  await notebook.openExample("bucket");
  own.push(await notebook.planName.inputValue());
  await notebook.begin();
  await look(notebook, "a new notebook");
  for (const reading of READINGS.slice(0, 3)) await notebook.read(reading);
  await notebook.page.locator(".forecast:not(.stale)").waitFor({ timeout: 60_000 });
  await notebook.unfoldAll();
  await look(notebook, "read");
  await notebook.set("notebook-planted", "wet");
  await notebook.settled();
  await look(notebook, "with a problem");
});

for (const viewport of [NARROW, PHONE]) {
  test(`nothing is cut off in Spanish at ${viewport.width} px, in both systems of units`, async (t) => {
    const screen = await Screen.open(t, { viewport, ...SPANISH });
    const look = async (state) => {
      assert.deepEqual(await clipped(screen.page), [], state);
      assert.equal(await screen.overflows(), false, state);
    };
    await look("first page");
    for (const key of EXAMPLES) {
      await screen.openExample(key);
      for (const units of ["metric", "us"]) {
        await screen.chooseUnits(units);
        for (const step of STEPS) {
          await screen.goTo(step);
          await look(`${key}, ${step}, ${units}`);
        }
        await screen.unfoldAll();
        await look(`${key}, unfolded, ${units}`);
      }
      await newPlan(screen);
    }
  });
}

test("a trial and a notebook in Spanish, ounces and gallons: nothing is cut off, nothing bars anybody", async (t) => {
  const options = { viewport: NARROW, context: { locale: "es-US" } };
  const look = async (screen, state) => {
    assert.deepEqual(await clipped(screen.page), [], state);
    assert.equal(await screen.overflows(), false, state);
    assert.deepEqual(await violations(screen), [], state);
  };
  const trial = inSpanish(await TrialScreen.open(t, options));
  await trial.openExample("floating_boards");
  await trial.chooseUnits("metric");
  await trial.enter(TANK);
  await trial.begin();
  await trial.layOut();
  await trial.paste(TABLE);
  await trial.page.locator(".measure").first().waitFor();
  await look(trial, "trial, metric");
  await trial.chooseUnits("us");
  await look(trial, "trial, US customary");
  assert.match(await trial.trial.innerText(), /\d\soz/);

  const notebook = inSpanish(await NotebookScreen.open(t, options));
  await notebook.openExample("bucket");
  await notebook.chooseUnits("metric");
  await notebook.begin();
  for (const reading of READINGS.slice(0, 3)) await notebook.read(reading);
  await notebook.page.locator(".forecast:not(.stale)").waitFor({ timeout: 60_000 });
  await look(notebook, "notebook, metric");
  await notebook.chooseUnits("us");
  await notebook.page.locator(".forecast:not(.stale)").waitFor({ timeout: 60_000 });
  await look(notebook, "notebook, US customary");
  assert.match(await notebook.notebook.innerText(), /pulg/);
});

test("the card fits one page in both languages and systems of units", async (t) => {
  for (const locale of ["es-ES", "es-US"]) {
    const screen = await Screen.open(t, { context: { locale } });
    for (const key of EXAMPLES) {
      await screen.openExample(key);
      await screen.settled();
      for (const format of ["A4", "Letter"]) {
        const { pages } = await print(screen.page, { format });
        assert.equal(pages.length, 1, `${key} ${locale} ${format}`);
      }
      await newPlan(screen);
    }
  }
});

test("before the program is here, and where it cannot come, the reader's language is spoken too", async (t) => {
  const { boot } = languagesOf().es;
  const page = await launch(t, { ...SPANISH, expected: [/.*/] });
  await page.route("**/*.wasm", (route) => route.abort());
  const site = await startServer(t);
  await page.goto(site.url);
  await page.getByText(boot.failed).waitFor();
  assert.equal(await page.evaluate(() => document.documentElement.lang), "es");
  assert.equal(STORE, "slackwater.plans");
});
