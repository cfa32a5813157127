// In the reader's own language and units: chosen, remembered, carried by links, complete, and never
// touching the plan.

import assert from "node:assert/strict";
import test from "node:test";
import { clipped, languagesOf, markedSite, unmarked } from "./languages.mjs";
import { print } from "./print.mjs";
import { DESKTOP, launch, PHONE, startServer } from "./rig.mjs";
import { EXAMPLES, Screen, STEPS, STORE } from "./screen.mjs";
import { SYSTEMS } from "./systems.mjs";

const NARROW = { width: 320, height: 800 };
const SPANISH = { context: { locale: "es-ES" } };

/** What the browser keeps of the open plan, but its name, which is the grower's own text. */
async function keptPlan(screen) {
  const store = JSON.parse(await screen.stored());
  const { plan } = store.plans.find(({ id }) => id === store.open);
  return { ...plan, name: "" };
}

const language = (screen) => screen.page.evaluate(() => document.documentElement.lang);

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
  const entries = Object.fromEntries(Object.entries(SYSTEMS.bucket).map(([path, { enter }]) => [path, enter]));
  const plans = [];
  for (const key of ["en", "es"]) {
    for (const units of ["metric", "us"]) {
      const screen = await Screen.open(t, { viewport: PHONE, touch: true, context: { locale: "en-GB" } });
      await speak(screen, key);
      await screen.chooseUnits(units);
      await screen.openExample("bucket");
      for (const [path, text] of Object.entries(entries)) {
        const step = path.split(".")[0] === "build" ? "container" : path.split(".")[0];
        if ((await screen.stepButton(step).getAttribute("aria-current")) !== "step") await screen.goTo(step);
        await screen.unfold(path);
        const list = await screen.field(path).evaluate((control) => control.localName === "select");
        // Bare numbers of the list are metric; a typed unit always wins.
        await (list ? screen.field(path).selectOption(text) : screen.field(path).fill(text));
      }
      await screen.settled();
      plans.push(await keptPlan(screen));
      const card = await screen.printCard("A4");
      assert.match(card.text, key === "es" ? /Llene|Llenar/ : /Fill/);
      assert.match(card.text, units === "us" ? /\b(in|pulg)\b/ : /\bcm\b/);
    }
  }
  // Bare numbers mean other sizes in other units, so the plans of one system of units are compared.
  assert.deepEqual(plans[2], plans[0]);
  assert.deepEqual(plans[3], plans[1]);
});

test("switching language and units with everything open changes no bit of the plan", async (t) => {
  const screen = await Screen.open(t, { viewport: DESKTOP, context: { locale: "en-GB" } });
  for (const key of EXAMPLES) {
    await screen.openExample(key);
    const before = await screen.stored();
    const plan = await keptPlan(screen);
    await screen.unfoldAll();
    for (const [to, units] of [["es", "metric"], ["es", "us"], ["en", "us"], ["en", "metric"]]) {
      await speak(screen, to);
      await screen.chooseUnits(units);
      assert.deepEqual(await keptPlan(screen), plan, `${key} ${to} ${units}`);
    }
    assert.equal(JSON.stringify({ ...JSON.parse(before), units: "metric" }), await screen.stored());
    await screen.button("New plan").click();
  }
});

test("a link made in one language and system opens in the reader's own, with the same plan", async (t) => {
  const site = await startServer(t);
  const maker = await Screen.open(t, { site, context: { locale: "es-US" } });
  await maker.openExample("floating_boards");
  await maker.settled();
  const link = await maker.page.locator("#link").inputValue();
  assert.match(link, /#[A-Z0-9]+\.ES$/);
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
    await reader.page.locator("#brought button.main").click();
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
  const page = await launch(t, { viewport: DESKTOP, context: { locale: "en-GB" }, expected: [/worker/] });
  const screen = new Screen(page);
  await page.goto(site.url);
  await screen.ready();
  const own = [];
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
    await screen.field("container.height_cm").fill("wide");
    await screen.settled();
    await look(`${key}, with a problem`);
    await page.locator("#plans").click();
    await page.locator(".menu .sheet > .row button").first().click();
  }
  await screen.unfoldAll();
  await look("all plans, glossary");
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
      await screen.page.locator("#plans").click();
      await screen.page.locator(".menu .sheet > .row button").first().click();
    }
  });
}

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
      await screen.page.locator("#plans").click();
      await screen.page.locator(".menu .sheet > .row button").first().click();
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
