// Writes sheets and keys for a class, or builds the page on which students practice.
//   node main.mjs [topic ...] [--students 30] ...   sheets as files: see sheets.mjs
//   node main.mjs page                              the page: see page.mjs
await import(process.argv[2] === "page" ? "./page.mjs" : "./sheets.mjs");
