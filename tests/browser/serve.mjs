// A small web server for a folder of static files, on this machine only. The browser tests use it
// as a module, `make serve` as a command:
//   node serve.mjs FOLDER [--port 8080] [--base /some/path/] [--open]

import { spawn } from "node:child_process";
import { readFile, stat } from "node:fs/promises";
import { createServer } from "node:http";
import { extname, join, resolve, sep } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { brotliCompressSync } from "node:zlib";

const LOOPBACK = "127.0.0.1";
const TYPES = {
  ".css": "text/css; charset=utf-8",
  ".html": "text/html; charset=utf-8",
  ".ico": "image/x-icon",
  ".js": "text/javascript; charset=utf-8",
  ".json": "application/json",
  ".png": "image/png",
  ".svg": "image/svg+xml",
  ".txt": "text/plain; charset=utf-8",
  ".wasm": "application/wasm",
  ".webmanifest": "application/manifest+json",
  ".woff2": "font/woff2",
};

/** Serves `folder` below the path `base`. Port 0 is any free one; a busy port is an error.
 *  `site.folder` may be changed while it runs, as a new release would change it; `site.answers`
 *  set to false makes every request fail, as if the host were gone. `packed` sends texts and programs
 *  with brotli, as static hosts do.
 *  @returns {Promise<{url: string, folder: string, answers: boolean, close: () => Promise<void>}>} */
export async function serve(folder, { port = 0, base = "/", packed = false } = {}) {
  const site = { folder, answers: true, packed: packed ? new Map() : undefined };
  const server = createServer((request, response) => {
    if (!site.answers) {
      request.destroy();
      return;
    }
    answer(site, base, request, response).catch(() => response.destroy());
  });
  await new Promise((listening, failed) => {
    server.once("error", failed).listen(port, LOOPBACK, listening);
  });
  site.url = `http://${LOOPBACK}:${server.address().port}${base}`;
  site.close = () =>
    new Promise((closed) => {
      server.close(closed);
      server.closeAllConnections();
    });
  return site;
}

async function answer(site, base, request, response) {
  const file = fileFor(site.folder, base, request);
  const found = file && (await stat(file).catch(() => undefined));
  if (!found?.isFile()) {
    response.writeHead(404, { "content-type": TYPES[".txt"] }).end("Not here.\n");
    return;
  }
  const headers = {
    "content-type": TYPES[extname(file)] ?? "application/octet-stream",
    // A rebuilt page must show at the next reload.
    "cache-control": "no-cache",
    "content-length": found.size,
    "x-content-type-options": "nosniff",
  };
  let bytes = await readFile(file);
  if (site.packed && extname(file) !== ".png") {
    if (!site.packed.has(file)) site.packed.set(file, brotliCompressSync(bytes));
    bytes = site.packed.get(file);
    headers["content-encoding"] = "br";
    headers["content-length"] = bytes.length;
  }
  response.writeHead(200, headers).end(request.method === "HEAD" ? undefined : bytes);
}

/** The file that a request asks for, or undefined where it leaves the folder or is no plain read. */
function fileFor(folder, base, request) {
  if (request.method !== "GET" && request.method !== "HEAD") return undefined;
  const address = request.url.split("?")[0];
  if (!address.startsWith(base)) return undefined;
  let name;
  try {
    name = decodeURIComponent(address.slice(base.length));
  } catch {
    return undefined;
  }
  if (name.includes("\0")) return undefined;
  const top = resolve(folder);
  const file = join(top, name.endsWith("/") || name === "" ? `${name}index.html` : name);
  return file.startsWith(top + sep) ? file : undefined;
}

/** As `serve`, on the first free port from `port` on. */
async function serveFrom(folder, { port, base }) {
  for (let next = port; next < port + 20; next += 1) {
    try {
      return await serve(folder, { port: next, base });
    } catch (error) {
      if (error.code !== "EADDRINUSE" && error.code !== "EACCES") throw error;
      process.stdout.write(`Port ${next} is taken.\n`);
    }
  }
  return serve(folder, { base });
}

/** Shows the page in the person's own browser, if there is a desktop to show it on. */
function open(url) {
  const desktop = process.platform === "darwin" || process.env.DISPLAY || process.env.WAYLAND_DISPLAY;
  if (!desktop || process.env.CI) return;
  const opener = process.platform === "darwin" ? "open" : "xdg-open";
  const child = spawn(opener, [url], { detached: true, stdio: "ignore" });
  child.on("error", () => {});
  child.unref();
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: {
      port: { type: "string", default: "8080" },
      base: { type: "string", default: "/" },
      open: { type: "boolean", default: false },
    },
  });
  const port = Number(values.port);
  if (!Number.isInteger(port) || port < 0 || port > 65515) {
    console.error(`'${values.port}' is no port: give a whole number from 0 to 65515.`);
    process.exit(2);
  }
  const site = await serveFrom(positionals[0] ?? "dist", { port, base: values.base });
  process.stdout.write(`Slackwater is at ${site.url}   (Ctrl+C stops it)\n`);
  if (values.open) open(site.url);
}
