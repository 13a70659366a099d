// Asks EPANET what the water does in each layout of a file, and writes what it says.
//   node ask-epanet.mjs layouts.inp answers.csv
import { readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";

const [layouts, answers] = process.argv.slice(2);
const packages = createRequire(join(process.cwd(), "package.json"));
const { Project, Workspace, NodeProperty, LinkProperty, CountType } = packages("epanet-js");
const { version } = JSON.parse(readFileSync("node_modules/epanet-js/package.json", "utf8"));

// It warns of pumps that cannot lift; some of them are meant not to.
console.warn = () => {};
const workspace = new Workspace();
await workspace.loadModule();
const rows = [`# EPANET ${workspace.version} by epanet-js ${version}`, "layout,id,value"];

for (const text of readFileSync(layouts, "utf8").split(/^;; /m).slice(1)) {
  const name = text.slice(0, text.indexOf("\n")).trim();
  workspace.writeFile("layout.inp", text.slice(text.indexOf("\n") + 1));
  const model = new Project(workspace);
  model.open("layout.inp", "report.rpt", "out.bin");
  try {
    model.solveH();
  } catch (error) {
    console.error(`${name}: ${String(error.message).slice(0, 100)}`);
    rows.push(`${name},unsolved,1`);
    model.close();
    continue;
  }
  for (let i = 1; i <= model.getCount(CountType.NodeCount); i++) {
    const id = model.getNodeId(i);
    if (/^N\d+d?$/.test(id)) {
      rows.push(`${name},${id},${model.getNodeValue(i, NodeProperty.Head).toFixed(4)}`);
    }
  }
  for (let i = 1; i <= model.getCount(CountType.LinkCount); i++) {
    const id = model.getLinkId(i);
    if (/^L\d+\.\d+$/.test(id)) {
      rows.push(`${name},${id},${model.getLinkValue(i, LinkProperty.Flow).toFixed(4)}`);
    }
  }
  model.close();
}
writeFileSync(answers, rows.join("\n") + "\n");
