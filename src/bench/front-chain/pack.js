// Reads loom-mixes.csv on standard input and prints, for each mix, the radius of the circle round its sorted front chain.
// npm install && node pack.js < ../../test/resources/reference/packing/loom-mixes.csv
import { packEnclose, packSiblings } from "d3-hierarchy";
import { readFileSync } from "node:fs";

const rows = readFileSync(0, "utf8")
  .split("\n")
  .filter((line) => line && !line.startsWith("#"))
  .slice(1);
for (const row of rows) {
  const [id, , wires, , listed] = row.split(",");
  const radii = wires.split(" ").flatMap((group) => {
    const [count, diameter] = group.split("x").map(Number);
    return Array(count).fill(diameter / 2);
  });
  const circles = radii.sort((a, b) => b - a).map((r) => ({ r }));
  const radius = packEnclose(packSiblings(circles)).r;
  console.log(`${id} ${radius.toFixed(6)} (listed ${listed})`);
}
