// A file grows under a temporary name and is renamed when it is complete, so nobody mistakes a part for the whole.
import { open, rename, stat } from "node:fs/promises";
import { BatchError } from "./header.mjs";

const partOf = (file) => `${file}.part`;

/** Opens the partial file and cuts it to its first `bytes`, which drops a last row that was cut off. */
export async function openOutput(file, bytes) {
  const handle = await open(partOf(file), "a");
  const { size } = await handle.stat();
  if (size < bytes) {
    await handle.close();
    throw new BatchError(`${partOf(file)}: shorter than when the run stopped. Start over with --restart.`);
  }
  await handle.truncate(bytes);
  let written = bytes;
  return {
    async write(text) {
      const data = Buffer.from(text);
      await handle.writeFile(data);
      written += data.length;
    },
    /** Flushes to disk and returns the size. */
    async synced() {
      await handle.datasync();
      return written;
    },
    close: () => handle.close(),
  };
}

/** Renames a complete file, unless a stopped run has already done so. */
export async function publish(file, bytes) {
  try {
    await rename(partOf(file), file);
  } catch (error) {
    if (error.code !== "ENOENT") throw error;
  }
  const size = await stat(file).then(
    (found) => found.size,
    () => 0,
  );
  if (size !== bytes)
    throw new BatchError(`${file}: changed since it was written. Start over with --restart.`);
}
