// Writes engine/generated/*.ts, the types of the documents that engine and page speak and the table of the job's fields,
// from docs/schema.
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

const partName = (ref) => ref.replace("#/$defs/", "");

/// What a form has to know of one field. Texts of at most 60 characters are lengths; the schema has no other such.
function fieldOf(name, schema, needed, instead) {
  const of = schema.type === "array" ? schema.items : schema;
  const kind = of.$ref
    ? "part"
    : of.enum
      ? "choice"
      : of.type === "integer"
        ? "whole"
        : of.type === "boolean"
          ? "truth"
          : of.maxLength === 60
            ? "length"
            : "text";
  return {
    name,
    kind,
    ...(schema.type === "array" ? { list: true } : {}),
    ...(of.$ref ? { part: partName(of.$ref) } : {}),
    ...(of.enum ? { choices: of.enum } : {}),
    ...(of.maxLength > 200 ? { long: true } : {}),
    ...(needed ? { needed: true } : {}),
    ...(instead.length > 0 ? { instead } : {}),
    help: schema.description,
  };
}

/// Names of which a part has one at most.
function insteadOf(schema, name) {
  const one = (schema.oneOf ?? []).flatMap((choice) => choice.required ?? []);
  const not = schema.not?.required ?? [];
  return [one, not].filter((names) => names.includes(name)).flatMap((names) => names.filter((other) => other !== name));
}

function partOf(schema) {
  const fields = Object.entries(schema.properties).map(([name, field]) =>
    fieldOf(name, field, (schema.required ?? []).includes(name), insteadOf(schema, name)),
  );
  return { help: schema.description, one: (schema.oneOf ?? []).flatMap((choice) => choice.required ?? []), fields };
}

const kFormTypes = `
export interface FormField {
  readonly name: string;
  readonly kind: "text" | "length" | "whole" | "truth" | "choice" | "part";
  /// A list of such.
  readonly list?: true;
  /// The part that it is, or of which it is a list.
  readonly part?: string;
  readonly choices?: readonly string[];
  /// A text of several lines.
  readonly long?: true;
  readonly needed?: true;
  /// Fields that cannot stand beside it.
  readonly instead?: readonly string[];
  readonly help: string;
}

export interface FormPart {
  readonly help: string;
  /// Exactly one of these is wanted.
  readonly one: readonly string[];
  readonly fields: readonly FormField[];
}
`;

/// The generated table of what may stand in a job, for forms.
export async function formTable() {
  const schema = JSON.parse(await readFile(join(schemas, "job.schema.json"), "utf8"));
  const parts = { job: partOf(schema) };
  for (const [name, part] of Object.entries(schema.$defs)) parts[name] = partOf(part);
  const banner = "// Made by tools/contract_types.mjs from docs/schema/job.schema.json. Not to be changed by hand.";
  const table = JSON.stringify(parts, null, 2);
  return `${banner}\n${kFormTypes}\nexport const jobForm: Readonly<Record<string, FormPart>> = ${table};\n`;
}

/// Every generated file with its text.
async function texts() {
  const types = await Promise.all(Object.keys(kDocuments).map(async (name) => [name, await typesOf(name)]));
  return [...types, ["job_form", await formTable()]];
}

/// The names whose file is not up to date.
export async function drifted() {
  const stale = [];
  for (const [name, text] of await texts()) {
    const there = await readFile(join(generated, `${name}.ts`), "utf8").catch(() => "");
    if (there !== text) stale.push(name);
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
  for (const [name, text] of await texts()) await writeFile(join(generated, `${name}.ts`), text);
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) await main();
