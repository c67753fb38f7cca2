// What the site needs beside typedoc's options: pages named by their headings, modules by the way they are imported, and words
// for the lines of working.
import { Comment, Converter, ReflectionKind } from "typedoc";
import { ENGLISH_PRACTICE_WORDS } from "../dist/practice/index.js";

export function load(app) {
  app.converter.on(Converter.EVENT_CREATE_DOCUMENT, (_, page) => {
    const heading = /^# (.+)$/m.exec(page.content[0]?.text ?? "");
    if (heading) page.name = heading[1];
  });

  app.converter.on(Converter.EVENT_CREATE_DECLARATION, (_, module) => {
    if (!module.kindOf(ReflectionKind.Module)) return;
    module.name = module.name === "index" ? "swath-to-spoon" : `swath-to-spoon/${module.name}`;
  });

  app.converter.on(Converter.EVENT_RESOLVE_BEGIN, ({ project }) => {
    // The site's front page has the project's name above it already.
    const [first] = project.readme ?? [];
    if (first) first.text = first.text.replace(/^# .*\n/, "");

    // What a line finds is told once, in the table of words.
    for (const property of project.getReflectionsByKind(ReflectionKind.Property)) {
      if (!/^(Known|Practice)Lines$/.test(property.parent?.name)) continue;
      const words = ENGLISH_PRACTICE_WORDS.lines[property.name];
      if (words) property.comment = new Comment([{ kind: "text", text: `Finds: ${words.found}.` }]);
    }
  });
}
