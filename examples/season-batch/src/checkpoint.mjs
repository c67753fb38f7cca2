// Where a run has got to, in a file of its own beside the doses, so that a run that was stopped can go on from there.
import { createHash } from "node:crypto";
import { createReadStream } from "node:fs";
import { open, readFile, rename, rm } from "node:fs/promises";
import { createRequire } from "node:module";
import { BatchError } from "./header.mjs";

const { version: library } = createRequire(import.meta.url)("swath-to-spoon/package.json");

/** What has to be the same for a run to go on: the input to the last byte, and what computes. */
export async function identityOf(input) {
  const hash = createHash("sha256");
  for await (const chunk of createReadStream(input)) hash.update(chunk);
  return { format: 1, library, input: hash.digest("hex") };
}

/** The checkpoint of a run that was stopped, or nothing; a BatchError where it belongs to another input or library. */
export async function readCheckpoint(file, identity) {
  let text;
  try {
    text = await readFile(file, "utf8");
  } catch (error) {
    if (error.code === "ENOENT") return undefined;
    throw error;
  }
  const checkpoint = JSON.parse(text);
  for (const name of Object.keys(identity)) {
    if (checkpoint.identity?.[name] === identity[name]) continue;
    const what = name === "input" ? "the input has changed" : `the ${name} has changed`;
    throw new BatchError(
      `${file}: ${what} since this run was stopped. Restore it, or start over with --restart.`,
    );
  }
  return checkpoint;
}

/** Either the checkpoint before is there or this one is, whole: never half of one. */
export async function writeCheckpoint(file, checkpoint) {
  const draft = `${file}.part`;
  const handle = await open(draft, "w");
  try {
    await handle.writeFile(JSON.stringify(checkpoint));
    await handle.sync();
  } finally {
    await handle.close();
  }
  await rename(draft, file);
}

export const removeCheckpoint = (file) => rm(file, { force: true });
