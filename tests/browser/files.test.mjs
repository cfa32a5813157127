// Plans travel in files: saved, opened, dropped, merged or put in place of others; nothing is lost.

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import test from "node:test";
import { Screen } from "./screen.mjs";

const metric = { context: { locale: "en-GB" } };

const offer = (screen) => screen.page.locator(".offer");

async function saved(screen, name) {
  const waiting = screen.page.waitForEvent("download");
  await screen.button(name).click();
  const file = await waiting;
  return { name: file.suggestedFilename(), text: await readFile(await file.path(), "utf8") };
}

const choose = (screen, text, name = "plans.json") =>
  screen.page.locator(".file input:visible").setInputFiles({ name, mimeType: "application/json", buffer: Buffer.from(text) });

const plansOf = async (screen) => JSON.parse(await screen.stored()).plans.map(({ plan }) => plan);

test("all plans to a file, and from it in a fresh profile: added, and not twice", async (t) => {
  const screen = await Screen.open(t, metric);
  await screen.openExample("bottle");
  await screen.openMenu();
  await screen.button("New plan").click();
  await screen.openExample("covered_tank");
  await screen.openMenu();
  const one = await saved(screen, "Save this plan to a file");
  const all = await saved(screen, "Save all plans to a file");
  const plans = await plansOf(screen);
  assert.equal(JSON.parse(all.text).kind, "slackwater.plans");
  assert.deepEqual(JSON.parse(all.text).plans.map(({ plan }) => plan), plans);
  assert.deepEqual(JSON.parse(one.text).plans.map(({ plan }) => plan), [plans[1]]);

  const other = await Screen.open(t, metric);
  await choose(other, all.text);
  await offer(other).waitFor();
  assert.equal(await other.stored(), null);
  await other.button("Add to my plans").click();
  assert.deepEqual(await plansOf(other), plans);
  await choose(other, one.text);
  await other.button("Add to my plans").click();
  assert.deepEqual(await plansOf(other), plans);
});

test("replacing saves what was there to a file first", async (t) => {
  const screen = await Screen.open(t, metric);
  await screen.openExample("bottle");
  await screen.openMenu();
  const { text } = await saved(screen, "Save this plan to a file");
  await screen.planName.fill("To be replaced");
  await screen.openMenu({ open: true });
  await choose(screen, text);
  const before = await saved(screen, "Replace all my plans");
  assert.equal(JSON.parse(before.text).plans[0].plan.name, "To be replaced");
  assert.deepEqual(await plansOf(screen), JSON.parse(text).plans.map(({ plan }) => plan));
});

test("a file dropped on the page is offered", async (t) => {
  const screen = await Screen.open(t, metric);
  await screen.openExample("bucket");
  const [kept] = await plansOf(screen);
  await screen.page.evaluate((text) => {
    const data = new DataTransfer();
    data.items.add(new File([text], "plan.json", { type: "application/json" }));
    for (const name of ["dragover", "drop"]) {
      document.body.dispatchEvent(new DragEvent(name, { bubbles: true, cancelable: true, dataTransfer: data }));
    }
  }, JSON.stringify({ ...kept, name: "Dropped" }));
  await offer(screen).waitFor();
  assert.match(await offer(screen).innerText(), /Dropped/);
  await screen.button("Do not keep").click();
  assert.deepEqual(await plansOf(screen), [kept]);
});

const refused = {
  "a later version": ['{"kind":"slackwater.plans","version":2,"plans":[]}', /later version/],
  "a plan of a later version": ['{"plans":[{"plan":{"version":9}}]}', /later version/],
  "no JSON": ["plans", /no plans/],
  "another kind of JSON": ['{"hello":1}', /no plans/],
  "no plan in it": ['{"kind":"slackwater.plans","version":1,"plans":[]}', /no plans/],
  "too much": [" ".repeat(5_000_001), /too large/],
};
for (const [what, [text, sentence]] of Object.entries(refused)) {
  test(`a file that is refused kindly: ${what}`, async (t) => {
    const screen = await Screen.open(t, metric);
    await screen.openExample("bucket");
    const kept = await screen.stored();
    await screen.openMenu();
    await choose(screen, text);
    await offer(screen).waitFor();
    assert.match(await offer(screen).innerText(), sentence);
    await offer(screen).getByRole("button", { name: "Close" }).click();
    assert.equal(await screen.stored(), kept);
  });
}
