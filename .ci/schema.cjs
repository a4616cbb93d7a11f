// schema.cjs SCHEMA TAKEN REFUSED: holds a JSON Schema against two folders of
// orders. CommonJS, since only that finds ajv through NODE_PATH.
"use strict";
const fs = require("node:fs");
const path = require("node:path");
const Ajv = require("ajv/dist/2020").default;

const [schemaFile, taken, refused] = process.argv.slice(2);
let faults = 0;
const fault = (text) => { faults++; console.log(`red: ${text}`); };
const read = (file) => JSON.parse(fs.readFileSync(file, "utf8"));
const orders = (dir) => fs.existsSync(dir)
  ? fs.readdirSync(dir).filter((f) => f.endsWith(".json")).sort().map((f) => path.join(dir, f)) : [];

if (!fs.existsSync(schemaFile)) {
  console.log(`red: there is no ${schemaFile}`);
  process.exit(1);
}
const schema = read(schemaFile);
if (schema.$schema !== "https://json-schema.org/draft/2020-12/schema")
  fault(`${schemaFile} does not say that it is of draft 2020-12`);
// strict: a keyword that ajv does not know is an error, not something it skips.
// A union of types is no mistake here: a length may be text, a count a number.
const valid = new Ajv({ strict: true, allowUnionTypes: true, allErrors: true }).compile(schema);

for (const dir of [taken, refused]) {
  const files = orders(dir);
  if (files.length === 0) fault(`${dir} holds no order`);
  for (const file of files) {
    let order;
    try {
      order = read(file);
    } catch (e) {
      fault(`${file} is not JSON, so it says nothing about the schema: ${e.message}`);
      continue;
    }
    const ok = valid(order);
    if (dir === taken && !ok)
      fault(`${file} is refused: ` + valid.errors.map((e) => `${e.instancePath || "/"} ${e.message}`).join("; "));
    if (dir === refused && ok) fault(`${file} is taken, but it stands among the refused`);
  }
  console.log(`${files.length} orders in ${dir}`);
}
process.exit(faults ? 1 : 0);
