import { build } from "./pack.mjs";

// Builds where src has changed since the last build.
build();
