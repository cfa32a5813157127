// Starts the page: chooses the language, fetches its texts and the program that index.html names, and
// runs it, or says plainly why not. Then sees to it that the page opens without a network next time,
// and tells the program when a newer release is ready. A file of its own because the page's content
// security policy forbids inline scripts.

const { js, wasm, wasmIntegrity, texts } = document.querySelector("script[data-wasm]").dataset;
const boot = document.getElementById("boot");
const nearby = (name) => new URL(name, import.meta.url);
const workers = navigator.serviceWorker;
let registration;

// For each language: the file of its texts, that file's hash, and what is said before they are here.
const languages = JSON.parse(texts);
const language = chosenLanguage();
const say = languages[language].boot;
document.documentElement.lang = language;
for (const place of boot.querySelectorAll("[data-say]")) place.textContent = say[place.dataset.say];

try {
  // All at once; the hashes hold them to the release that index.html is of.
  const program = fetch(nearby(wasm), { integrity: wasmIntegrity });
  const spoken = speak(language);
  program.catch(() => {});
  spoken.catch(() => {});
  const { default: start } = await import(nearby(js));
  globalThis.slackwater = {
    speak,
    fetched: await spoken,
    languages: Object.entries(languages).map(([key, { boot }]) => ({ key, name: boot.name })),
  };
  // The program itself takes the first words away, once the page stands.
  await start({ module_or_path: program });
  // Only then does anything listen to what is said below.
  if (boot.isConnected) {
    await new Promise((stands) => {
      new MutationObserver(() => boot.isConnected || stands()).observe(boot.parentNode, { childList: true });
    });
  }
} catch (error) {
  const reason = document.createElement("p");
  reason.setAttribute("role", "alert");
  reason.textContent = typeof WebAssembly === "object" ? say.failed : say["too-old"];
  const again = document.createElement("button");
  again.type = "button";
  again.textContent = say.again;
  // A newer release may have mended it.
  again.onclick = takeUpdate;
  boot.replaceChildren(reason, again);
  // For whoever looks into the cause; nothing is sent anywhere.
  console.error(error);
}

addEventListener("slackwater-take-update", takeUpdate);
// After the start, which needs the connection for itself. A browser that keeps no worker (private
// windows, blocked storage, no secure host) runs the page all the same, with a network.
workers
  ?.register(nearby("worker.js"), { updateViaCache: "none" })
  .then(watch)
  .catch(() => {});

/**
 * The reader's own language: the one chosen here before, else the first of the browser's that the
 * page speaks, else that of the link which was followed.
 */
function chosenLanguage() {
  const wanted = navigator.languages.map((tag) => tag.split("-")[0]);
  try {
    wanted.unshift(localStorage.getItem("slackwater.language"));
  } catch {
    // Storage is blocked: nothing was chosen before.
  }
  wanted.push(/\.([a-z]+)$/i.exec(location.hash)?.[1].toLowerCase(), "en");
  return wanted.find((one) => Object.hasOwn(languages, one));
}

/** Fetches the texts of a language, with the decimal mark of the reader's region. */
async function speak(key) {
  const { file, integrity } = languages[key];
  const response = await fetch(nearby(file), { integrity });
  if (!response.ok) throw new Error(`${file}: ${response.status}`);
  const region = navigator.languages.find((tag) => tag.split("-")[0] === key) ?? key;
  const parts = new Intl.NumberFormat(region).formatToParts(1.5);
  const mark = parts.find(({ type }) => type === "decimal")?.value ?? ".";
  return { language: key, texts: await response.text(), mark };
}

function watch(found) {
  registration = found;
  const whenReady = (worker) => {
    // Without a controller this is the first release on the device, and nothing to offer.
    if (worker?.state === "installed" && workers.controller) dispatchEvent(new Event("slackwater-update-ready"));
  };
  whenReady(registration.waiting);
  registration.addEventListener("updatefound", () => {
    const worker = registration.installing;
    worker.addEventListener("statechange", () => whenReady(worker));
  });
  // A page that stays open for weeks asks when it is looked at again.
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "visible" && navigator.onLine) registration.update().catch(() => {});
  });
}

/** Changes to the waiting release, if there is one, and loads the page anew: this tab only. */
function takeUpdate() {
  const waiting = registration?.waiting;
  if (!waiting) return location.reload();
  waiting.addEventListener("statechange", () => {
    if (waiting.state === "activated") location.reload();
  });
  waiting.postMessage("take over");
}
