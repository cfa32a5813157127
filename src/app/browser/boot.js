// Starts the page: fetches the program that index.html names and runs it, or says plainly why not.
// A file of its own because the page's content security policy forbids inline scripts.

const script = document.querySelector("script[data-wasm]");
const boot = document.getElementById("boot");
const nearby = (name) => new URL(name, import.meta.url);

try {
  const { default: start } = await import(nearby(script.dataset.js));
  await start({ module_or_path: nearby(script.dataset.wasm) });
  boot.remove();
} catch (error) {
  const reason = document.createElement("p");
  reason.setAttribute("role", "alert");
  reason.textContent =
    typeof WebAssembly === "object"
      ? "Slackwater could not be loaded. Check the connection, then reload the page."
      : "Slackwater cannot run in this browser: WebAssembly is missing or switched off. Try a newer browser.";
  boot.replaceChildren(reason);
  // For whoever looks into the cause; nothing is sent anywhere.
  console.error(error);
}
