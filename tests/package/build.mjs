import { tarball } from "./pack.mjs";

// Builds and packs where something has changed since the last time.
tarball();
