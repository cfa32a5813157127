// Storage that is blocked, full, damaged or from a later version: the page works, says so, and
// loses nothing.

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import test from "node:test";
import { ASIDE, Screen, STORE } from "./screen.mjs";

const metric = { context: { locale: "en-GB" } };
const NOT_KEPT = /does not keep plans/;

/** Opens the page with these stored texts, which are written before its first start only. */
const openWith = (t, stored) =>
  Screen.open(t, {
    ...metric,
    before: (page) =>
      page.addInitScript((texts) => {
        if (sessionStorage.getItem("written")) return;
        sessionStorage.setItem("written", "yes");
        for (const [key, text] of Object.entries(texts)) localStorage.setItem(key, text);
      }, stored),
  });

const workingPlan = async (screen) => {
  await screen.openExample("bucket");
  await screen.field("container.height_cm").fill("36");
  await screen.chooseUnits("us");
  await screen.chooseUnits("metric");
  assert.match((await screen.figures()).fill, /below the rim/);
  assert.ok(await screen.printButton.isEnabled());
};

const blocked = {
  "the storage itself refused": () => {
    Object.defineProperty(window, "localStorage", {
      get() {
        throw new DOMException("The operation is insecure.", "SecurityError");
      },
    });
  },
  "no storage at all": () => {
    Object.defineProperty(window, "localStorage", { get: () => null });
  },
  "every access refused": () => {
    for (const name of ["getItem", "setItem", "removeItem"]) {
      Storage.prototype[name] = () => {
        throw new DOMException("The operation is insecure.", "SecurityError");
      };
    }
  },
};

for (const [how, block] of Object.entries(blocked)) {
  test(`blocked storage: ${how}`, async (t) => {
    const screen = await Screen.open(t, { ...metric, before: (page) => page.addInitScript(block) });
    assert.match(await screen.notices.innerText(), NOT_KEPT);
    await workingPlan(screen);
    assert.match(await screen.notices.innerText(), NOT_KEPT);
    await screen.openMenu();
    await screen.button("New plan").click();
    assert.equal((await screen.planList()).length, 1);
  });
}

test("storage that takes nothing: kept plans still open and stay untouched", async (t) => {
  const before = await Screen.open(t, metric);
  await before.openExample("bottle");
  const [kept, figures] = [await before.stored(), await before.figures()];

  const screen = await openWith(t, { [STORE]: kept });
  await screen.page.addInitScript(() => {
    Storage.prototype.setItem = () => {
      throw new DOMException("The quota has been exceeded.", "QuotaExceededError");
    };
  });
  await screen.reload();
  assert.match(await screen.notices.innerText(), NOT_KEPT);
  assert.deepEqual(await screen.figures(), figures);
  await screen.field("container.body_height_cm").fill("23");
  assert.notDeepEqual(await screen.figures(), figures);
  assert.equal(await screen.stored(), kept);
  assert.match(await screen.notices.innerText(), NOT_KEPT);
});

test("storage that fills up: a notice, and none once there is room again", async (t) => {
  const screen = await Screen.open(t, metric);
  await screen.openExample("bottle");
  const kept = await screen.stored();
  await screen.page.evaluate(() => {
    // In ever smaller pieces, until not a letter more fits.
    for (let size = 1 << 22; size >= 1; size >>= 1) {
      try {
        for (let i = 0; ; i += 1) localStorage.setItem(`filler ${size} ${i}`, "x".repeat(size));
      } catch {
        // The next smaller piece.
      }
    }
  });
  await screen.planName.fill("A name that is a good deal longer than the one which stood here before it");
  await screen.settled();
  assert.match(await screen.notices.innerText(), NOT_KEPT);
  assert.equal(await screen.stored(), kept);
  assert.ok(await screen.printButton.isEnabled());
  await screen.page.evaluate(() => {
    for (const key of Object.keys(localStorage)) if (key.startsWith("filler")) localStorage.removeItem(key);
  });
  await screen.planName.fill("There is room");
  await screen.settled();
  assert.doesNotMatch(await screen.notices.innerText(), NOT_KEPT);
  assert.match(await screen.stored(), /There is room/);
});

const unreadable = {
  "cut off": '{"version":1,"plans":[{"id":1,"plan":{"name":"A plan wi',
  "no JSON": "plans ✓ \u0000 <b>&amp;",
  "of another kind": '{"version":1,"plans":"none"}',
  "a plan of another kind": '{"version":1,"plans":[{"id":1,"plan":7}],"open":1}',
  "of a later version": '{"version":2,"plans":[],"notebook":[{"what":"measured"}]}',
  "a plan of a later version": '{"version":1,"plans":[{"id":1,"plan":{"version":99,"name":"From later","notebook":[1]}}],"open":1}',
};

for (const [what, raw] of Object.entries(unreadable)) {
  test(`a stored text that is ${what} is set aside, offered, and never written over`, async (t) => {
    const screen = await openWith(t, { [STORE]: raw });
    assert.match(await screen.notices.innerText(), /could not be read/);
    assert.equal(await screen.stored(ASIDE), raw);
    await workingPlan(screen);
    assert.equal(await screen.stored(ASIDE), raw);
    await offered(t, screen, raw);

    // Closing the notice loses nothing: it is offered again the next time.
    await screen.reload();
    assert.equal(await screen.field("container.height_cm").inputValue(), "36");
    await screen.notices.getByRole("button", { name: "Close" }).click();
    assert.equal(await screen.notices.innerText(), "");
    assert.equal(await screen.stored(ASIDE), raw);
    await screen.reload();
    await offered(t, screen, raw);
    await remove(screen);
    assert.equal(await screen.stored(ASIDE), null);
    assert.equal(await screen.notices.innerText(), "");
  });
}

test("damage that stays is set aside once, however often the page is opened", async (t) => {
  const raw = unreadable["cut off"];
  const screen = await openWith(t, { [STORE]: raw });
  for (let i = 0; i < 3; i += 1) await screen.reload();
  const keys = await screen.page.evaluate(() => Object.keys(localStorage).sort());
  assert.deepEqual(keys, [STORE, ASIDE]);
  assert.equal(await screen.stored(), raw);
});

test("a second damage leaves the first in its place, and both are offered", async (t) => {
  const [first, second] = [unreadable["cut off"], unreadable["no JSON"]];
  const screen = await openWith(t, { [ASIDE]: first, [STORE]: second });
  await offered(t, screen, second);
  await screen.openExample("bottle");
  assert.equal(await screen.stored(ASIDE), first);
  await remove(screen);
  await offered(t, screen, first);
  assert.equal(await screen.stored(ASIDE), first);
  await remove(screen);
  assert.deepEqual(await screen.page.evaluate(() => Object.keys(localStorage)), [STORE]);
});

test("damage that cannot be set aside is not written over", async (t) => {
  const raw = unreadable["cut off"];
  const screen = await openWith(t, { [STORE]: raw });
  await screen.page.addInitScript(() => {
    Storage.prototype.setItem = () => {
      throw new DOMException("The quota has been exceeded.", "QuotaExceededError");
    };
  });
  await screen.page.evaluate((key) => localStorage.removeItem(key), ASIDE);
  await screen.reload();
  await offered(t, screen, raw);
  assert.match(await screen.notices.innerText(), NOT_KEPT);
  await workingPlan(screen);
  assert.equal(await screen.stored(), raw);
});

test("odd but readable stored texts open", async (t) => {
  for (const raw of ["{}", '{"plans":[],"open":9,"units":"furlongs"}', '{"plans":[{"id":1,"plan":{}}],"open":1}']) {
    const screen = await openWith(t, { [STORE]: raw });
    assert.equal(await screen.notices.innerText(), "");
    assert.doesNotMatch(await screen.text(), /NaN|undefined/);
    assert.equal(await screen.page.locator("#units").inputValue(), "metric");
  }
});

/** Two tabs of one profile, both with the same kept plan open. */
async function twoTabs(t) {
  const one = await Screen.open(t, metric);
  await one.openExample("bottle");
  const page = await one.page.context().newPage();
  await page.goto(one.page.url());
  const two = new Screen(page);
  await two.ready();
  return [one, two];
}

test("another tab's change is not written over: its plans can be taken", async (t) => {
  const [one, two] = await twoTabs(t);
  await two.planName.fill("From the other tab");
  await one.notices.getByText(/another tab/).waitFor();
  const theirs = await two.stored();
  await one.field("container.body_height_cm").fill("24");
  assert.equal(await one.stored(), theirs);
  await one.button("Take the other tab's plans").click();
  assert.equal(await one.planName.inputValue(), "From the other tab");
  assert.equal(await one.notices.innerText(), "");
  assert.deepEqual(JSON.parse(await one.stored()).plans, JSON.parse(theirs).plans);
});

test("another tab's change is written over only when asked", async (t) => {
  const [one, two] = await twoTabs(t);
  await two.planName.fill("From the other tab");
  await one.notices.getByText(/another tab/).waitFor();
  await one.planName.fill("From this tab");
  assert.match(await one.stored(), /From the other tab/);
  await one.button("Keep this tab's plans").click();
  assert.match(await one.stored(), /From this tab/);
  assert.equal(await one.notices.innerText(), "");
  await two.notices.getByText(/another tab/).waitFor();
});

test("opening another plan in another tab is no change of plans", async (t) => {
  const [one, two] = await twoTabs(t);
  await two.openMenu();
  await two.button("New plan").click();
  await two.page.locator("#welcome").waitFor();
  await one.planName.fill("Still mine");
  assert.equal(await one.notices.innerText(), "");
  assert.match(await one.stored(), /Still mine/);
});

test("durable storage is asked for after the first plan is kept, once", async (t) => {
  const screen = await Screen.open(t, {
    ...metric,
    before: (page) =>
      page.addInitScript(() => {
        window.asked = 0;
        navigator.storage.persist = async () => {
          window.asked += 1;
          return false;
        };
      }),
  });
  const asked = () => screen.page.evaluate(() => window.asked);
  assert.equal(await asked(), 0);
  await screen.openExample("bottle");
  await screen.planName.fill("Kept");
  assert.equal(await asked(), 1);
});

/** Removes what was set aside, which is offered only once it was saved. */
const remove = (screen) => screen.notices.getByRole("button", { name: /^Saved: remove/ }).click();

/** The link that saves what was set aside gives exactly this text. */
async function offered(t, screen, raw) {
  const waiting = screen.page.waitForEvent("download");
  await screen.notices.getByRole("link").click();
  const file = await waiting;
  assert.match(file.suggestedFilename(), /\.json$/);
  assert.equal(await readFile(await file.path(), "utf8"), raw);
}
