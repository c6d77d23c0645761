// Writes engine/generated/*.ts, the types of the documents that engine and page speak, from docs/schema.
// With --check it writes nothing and ends with 1 if a file is not what would be written.
import { mkdir, readFile, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { compile } from "json-schema-to-typescript";

const here = dirname(fileURLToPath(import.meta.url));
const schemas = join(here, "..", "..", "docs", "schema");
const generated = join(here, "..", "engine", "generated");

const kDocuments = { answer: "StringcourseAnswer", job: "StringcourseJob", refusals: "StringcourseRefusals" };

// A document's type is read only, as deep as it goes: nothing in the page changes a document in place.
const readOnly = (text) => text.replace(/^(\s+)((?:[A-Za-z_]\w*|"[^"]+")\??:)/gm, "$1readonly $2");

/// The generated text of one document's types.
export async function typesOf(name) {
  const schema = JSON.parse(await readFile(join(schemas, `${name}.schema.json`), "utf8"));
  delete schema.$id;
  schema.title = kDocuments[name];
  const text = await compile(schema, kDocuments[name], {
    additionalProperties: false,
    bannerComment: `// Made by tools/contract_types.mjs from docs/schema/${name}.schema.json. Not to be changed by hand.`,
    format: true,
    ignoreMinAndMaxItems: true,
    style: { printWidth: 120 },
  });
  return readOnly(text);
}

/// The names whose file is not up to date.
export async function drifted() {
  const stale = [];
  for (const name of Object.keys(kDocuments)) {
    const there = await readFile(join(generated, `${name}.ts`), "utf8").catch(() => "");
    if (there !== (await typesOf(name))) stale.push(name);
  }
  return stale;
}

async function main() {
  if (process.argv.includes("--check")) {
    const stale = await drifted();
    if (stale.length > 0) console.error(`not up to date: ${stale.join(", ")}; run npm run types`);
    process.exit(stale.length > 0 ? 1 : 0);
  }
  await mkdir(generated, { recursive: true });
  for (const name of Object.keys(kDocuments)) await writeFile(join(generated, `${name}.ts`), await typesOf(name));
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) await main();
