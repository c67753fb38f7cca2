// Finds a Chromium or Chrome. Under CI, as root on Debian or Ubuntu, installs one where there is none.
//   node tests/browser/chromium.mjs   prints its path, or says why there is none and exits with 1
import { execFileSync } from "node:child_process";
import { existsSync } from "node:fs";
import { pathToFileURL } from "node:url";

// The shell without windows first: it opens a page in half the time.
const PLACES = [
  process.env.CHROMIUM,
  "/usr/bin/chromium-headless-shell",
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
  "/usr/bin/google-chrome-stable",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
];

const found = () => PLACES.find((place) => place !== undefined && existsSync(place));

function install() {
  const quiet = { stdio: "ignore" };
  try {
    execFileSync("apt-get", ["update"], quiet);
  } catch {
    // What is listed already may do.
  }
  for (const name of ["chromium-headless-shell", "chromium"]) {
    try {
      execFileSync("apt-get", ["install", "-y", "--no-install-recommends", name], quiet);
      return;
    } catch {
      // The next, or it is told by whoever asks for the browser.
    }
  }
}

/** The path of a browser, or undefined. */
export function chromium() {
  if (found() === undefined && process.env.CI && process.getuid?.() === 0) install();
  return found();
}

/** What a headless browser is started with. */
export const FLAGS = [
  "--headless",
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) {
  const path = chromium();
  console.log(path ?? "no Chromium or Chrome found; set CHROMIUM to the path of one");
  process.exitCode = path === undefined ? 1 : 0;
}
