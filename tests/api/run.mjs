// Keeps tests/api/*.api.md: what each way into the package declares, so that a breaking change shows in review.
//   node tests/api/run.mjs            writes the reports from dist
//   node tests/api/run.mjs --check    fails where they differ
import { mkdirSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { basename, join } from "node:path";
import { CompilerState, Extractor, ExtractorConfig } from "@microsoft/api-extractor";
import { build, root } from "../package/pack.mjs";

const check = process.argv.includes("--check");
const kept = join(root, "tests/api");
const fresh = join(root, ".tmp/api");

build();
rmSync(fresh, { recursive: true, force: true });
mkdirSync(fresh, { recursive: true });

const { exports } = JSON.parse(readFileSync(join(root, "package.json"), "utf8"));
const entries = Object.entries(exports).filter(([, target]) => target.import);
const names = new Set(entries.map(([path]) => report(path)));
const configs = entries.map(([path, target]) => [path, configFor(path, target.import.types)]);
// One program for all of them.
const [[, first], ...others] = configs;
const additionalEntryPoints = others.map(([, { mainEntryPointFilePath }]) => mainEntryPointFilePath);
const compilerState = CompilerState.create(first, { additionalEntryPoints });
const faults = [];
for (const [path, config] of configs) if (differs(config)) faults.push(report(path));
for (const name of readdirSync(kept).filter((one) => one.endsWith(".api.md")))
  if (!names.has(name)) faults.push(name);

if (check && faults.length > 0) {
  console.log(`The public API is not what tests/api says: ${faults.join(", ")}.`);
  console.log("Run `npm run api`, read what changed, and version it as docs/versioning.md says.");
  process.exitCode = 1;
}

/** `./area/geodesic` is kept in area-geodesic.api.md, the root in index.api.md. */
function report(path) {
  return `${path === "." ? "index" : path.slice(2).replaceAll("/", "-")}.api.md`;
}

function configFor(path, types) {
  const file = join(root, types);
  const { compilerOptions } = JSON.parse(readFileSync(join(root, "tsconfig.json"), "utf8"));
  const none = { default: { logLevel: "none" } };
  return ExtractorConfig.prepare({
    configObject: {
      projectFolder: root,
      newlineKind: "lf",
      mainEntryPointFilePath: file,
      compiler: { overrideTsconfig: { compilerOptions, files: [file] } },
      apiReport: {
        enabled: true,
        reportFileName: basename(report(path), ".api.md"),
        reportFolder: kept,
        reportTempFolder: fresh,
        // Types that exported ones are made of, and that have no name outside: the root's report has them for all.
        includeForgottenExports: path === ".",
      },
      docModel: { enabled: false },
      dtsRollup: { enabled: false },
      tsdocMetadata: { enabled: false },
      // Docstrings are typedoc's to check.
      messages: { extractorMessageReporting: none, tsdocMessageReporting: none },
    },
    configObjectFullPath: join(root, "tests/api/api-extractor.json"),
    packageJsonFullPath: join(root, "package.json"),
  });
}

function differs(config) {
  const { apiReportChanged } = Extractor.invoke(config, {
    compilerState,
    localBuild: !check,
    messageCallback: (message) => {
      // The closing words above say all that is to be done.
      if (message.category === "console") message.handled = true;
    },
  });
  return apiReportChanged;
}
