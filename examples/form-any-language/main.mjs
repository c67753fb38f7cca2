// Serves a form made from the JSON Schema of a job. Checks what is sent with a JSON Schema validator, then plans it.
//   node main.mjs [--port 8080]
import { readFileSync } from "node:fs";
import { createServer } from "node:http";
import { createRequire } from "node:module";
import { parseArgs } from "node:util";
import { SprayMathError } from "swath-to-spoon";
import { planApplication } from "swath-to-spoon/plan";
import { renderHtml, worksheet } from "swath-to-spoon/worksheet";
import { faultsOf } from "./check.mjs";
import { fieldsOf, sent, typed } from "./form.mjs";
import { narrowed } from "./narrow.mjs";

const { values } = parseArgs({ options: { port: { type: "string", default: "8080" } } });
const schema = createRequire(import.meta.url)("swath-to-spoon/schema/plan-input.schema.json");
const example = JSON.parse(readFileSync(new URL("job.json", import.meta.url), "utf8"));
const style = readFileSync(new URL("style.css", import.meta.url), "utf8");
const MOST_BYTES = 1_000_000;

function page(part, job, faults) {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">
<title>Spray job</title><style>${style}</style>
</head>
<body><main>
<h1>Spray job</h1>
<p>Enter the job. You get what goes in each tank. ${faults.length > 0 ? `<strong class="fault">${faults.length === 1 ? "Fix 1 error below." : `Fix ${faults.length} errors below.`}</strong>` : ""}</p>
<form method="post" action="/" novalidate>
<button name="plan" value="1">Plan the job</button>
${fieldsOf(part, job, faults)}
<button name="plan" value="1">Plan the job</button>
</form>
</main></body>
</html>
`;
}

function answer(text) {
  const { job: texts, choices } = sent(text);
  const part = narrowed(schema, texts, choices);
  const job = typed(part, texts);
  if (!new URLSearchParams(text).has("plan")) return page(part, job, []);
  const faults = faultsOf(part, job);
  if (faults.length > 0) return page(part, job, faults);
  try {
    return renderHtml(worksheet(planApplication(job)));
  } catch (error) {
    // Errors that only the whole job shows, such as a fill over the tank size.
    if (!(error instanceof SprayMathError)) throw error;
    return page(part, job, error.issues);
  }
}

async function body(request) {
  const chunks = [];
  let size = 0;
  for await (const chunk of request) {
    size += chunk.length;
    if (size > MOST_BYTES) throw new RangeError("too long");
    chunks.push(chunk);
  }
  return Buffer.concat(chunks).toString();
}

const server = createServer(async (request, response) => {
  try {
    const html =
      request.method === "POST" ? answer(await body(request)) : page(narrowed(schema, example), example, []);
    response.writeHead(200, {
      "content-type": "text/html; charset=utf-8",
      "content-security-policy":
        "default-src 'none'; style-src 'unsafe-inline'; form-action 'self'; base-uri 'none'",
    });
    response.end(html);
  } catch (error) {
    response.writeHead(error instanceof RangeError ? 413 : 500).end();
    if (!(error instanceof RangeError)) console.error(error);
  }
});
server.listen(Number(values.port), "127.0.0.1", () => {
  console.log(`Open http://127.0.0.1:${server.address().port}/ in a browser. Stop with Ctrl+C.`);
});
