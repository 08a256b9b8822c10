// Owns the names by which a program and its JavaScript know each other. wasm-bindgen ends each of them in sixteen
// random digits, which no compression can shorten, and has them in both files: a letter or two does as well. Comments
// and indentation of the JavaScript go too, as nobody reads it.

/** The JavaScript and the program with short names for what the program imports. */
export function shortened(script, program) {
  const names = [...new Set(script.match(/\b__wb[a-z]+_\w+_[0-9a-f]{16}\b/g))];
  const short = new Map(names.map((name, place) => [name, `$${place.toString(36)}`]));
  const lines = script.replace(/\b__wb[a-z]+_\w+_[0-9a-f]{16}\b/g, (name) => short.get(name)).split("\n");
  const kept = lines.map((line) => line.trim()).filter((line) => line !== "" && !/^(\/\/|\/\*\*|\*)/.test(line));
  return { script: kept.join("\n"), program: renamed(program, short) };
}

const IMPORTS = 2;

/** The program, its imports renamed. */
function renamed(program, short) {
  const parts = [program.subarray(0, 8)];
  for (let at = 8; at < program.length;) {
    const [size, begin] = number(program, at + 1);
    const body = program.subarray(begin, begin + size);
    const section = program[at] === IMPORTS ? renamedImports(body, short) : body;
    parts.push(Buffer.from([program[at], ...leb(section.length)]), section);
    at = begin + size;
  }
  return Buffer.concat(parts);
}

/** The section of imports: how many, then of each its module, its name and its type. Only functions are renamed. */
function renamedImports(body, short) {
  const [count, first] = number(body, 0);
  const parts = [body.subarray(0, first)];
  let at = first;
  for (let index = 0; index < count; index += 1) {
    const [length, nameAt] = number(body, number(body, at).reduce((size, begin) => size + begin));
    const name = body.toString("utf8", nameAt, nameAt + length);
    const kind = nameAt + length;
    if (body[kind] !== 0) throw new Error(`the import ${name} is no function`);
    const [, end] = number(body, kind + 1);
    const now = Buffer.from(short.get(name) ?? name);
    const [moduleLength, moduleAt] = number(body, at);
    parts.push(body.subarray(at, moduleAt + moduleLength), Buffer.from(leb(now.length)), now, body.subarray(kind, end));
    at = end;
  }
  return Buffer.concat([...parts, body.subarray(at)]);
}

/** The number that begins at a place, in LEB128, and where it ends. */
function number(bytes, at) {
  let value = 0;
  for (let shift = 0; ; shift += 7) {
    const byte = bytes[at];
    at += 1;
    value |= (byte & 0x7f) << shift;
    if (byte < 0x80) return [value, at];
  }
}

/** A number as LEB128. */
function leb(value) {
  const bytes = [];
  do {
    bytes.push((value & 0x7f) | (value > 0x7f ? 0x80 : 0));
    value >>>= 7;
  } while (value > 0);
  return bytes;
}
