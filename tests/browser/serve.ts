import { existsSync, readFileSync, statSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { extname, join, normalize } from "node:path";

/** A folder on this machine's own address. */
export interface FolderServer {
  readonly address: string;
  readonly close: () => void;
}

const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html",
  ".css": "text/css",
  ".svg": "image/svg+xml",
};

/** Serves a folder as it is; what is no file is 404. */
export async function serve(folder: string): Promise<FolderServer> {
  const server = createServer((request, response) => {
    const path = normalize(new URL(request.url ?? "", "http://localhost").pathname);
    const file = join(folder, decodeURIComponent(path));
    if (!existsSync(file) || !statSync(file).isFile()) {
      response.writeHead(404).end();
      return;
    }
    response.setHeader("content-type", TYPES[extname(file)] ?? "text/javascript");
    response.end(readFileSync(file));
  });
  await new Promise<void>((done) => server.listen(0, "127.0.0.1", done));
  return {
    address: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    close: () => server.close(),
  };
}
