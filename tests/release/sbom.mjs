// The bill of materials: what an app gets that installs the package, and nothing of this workshop.
//   node tests/release/sbom.mjs    writes dist/sbom.cdx.json (CycloneDX); npm runs it before it packs (prepack)
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { npm, root, tarball } from "../package/pack.mjs";

/** What `npm sbom` finds in a folder that holds nothing but the packed package. */
export function bill() {
  const folder = mkdtempSync(join(tmpdir(), "sbom-"));
  try {
    writeFileSync(join(folder, "package.json"), '{ "name": "folder", "version": "0.0.0", "private": true }');
    npm(["install", "--ignore-scripts", "--no-audit", "--no-fund", "--prefer-offline", tarball()], folder);
    return ofThePackage(JSON.parse(npm(["sbom", "--sbom-format", "cyclonedx"], folder)));
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** The same about the package in place of the folder, and without what would differ from one run to the next. */
function ofThePackage({ serialNumber, metadata, components, dependencies, ...rest }) {
  const { timestamp, component: around, ...about } = metadata;
  // The tarball's place and digest are those before this file was put into it.
  const { hashes, ...own } = components.find(({ name }) => name === "swath-to-spoon");
  const links = own.externalReferences.filter(({ type }) => type !== "distribution");
  return {
    ...rest,
    metadata: { ...about, component: { ...own, externalReferences: links } },
    components: components.filter(({ name }) => name !== own.name),
    dependencies: dependencies.filter(({ ref }) => ref !== around["bom-ref"]),
  };
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href)
  writeFileSync(join(root, "dist/sbom.cdx.json"), `${JSON.stringify(bill(), undefined, 2)}\n`);
