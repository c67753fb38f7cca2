// A file that grows under another name and gets its own when it is complete, so that nobody takes a part for the whole.
import { open, rename, stat } from "node:fs/promises";
import { BatchError } from "./header.mjs";

const partOf = (file) => `${file}.part`;

/** Opens the part that is there and cuts it to its first `bytes`: a last row that was torn goes with the rest. */
export async function openOutput(file, bytes) {
  const handle = await open(partOf(file), "a");
  const { size } = await handle.stat();
  if (size < bytes) {
    await handle.close();
    throw new BatchError(
      `${partOf(file)}: shorter than when the run was stopped. Start again with --restart.`,
    );
  }
  await handle.truncate(bytes);
  let written = bytes;
  return {
    async write(text) {
      const data = Buffer.from(text);
      await handle.writeFile(data);
      written += data.length;
    },
    /** How much of it is certainly on the disk. */
    async synced() {
      await handle.datasync();
      return written;
    },
    close: () => handle.close(),
  };
}

/** Gives a complete file its name, where a run that was stopped just then has not done so already. */
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
  if (size !== bytes) throw new BatchError(`${file}: not as it was written. Start again with --restart.`);
}
