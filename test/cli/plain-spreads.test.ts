/** What the build makes of object literals that begin with a spread: `spreadOfNothing` of `.build.mjs`. */
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import ts from 'typescript';
import { describe, expect, inject, test } from 'vitest';

/** The first spread of every object literal that begins with one and goes on. */
function firstSpreads(text: string): readonly string[] {
  const file = ts.createSourceFile('program.js', text, ts.ScriptTarget.ES2023);
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isObjectLiteralExpression(node) && node.properties.length > 1) {
      const [first] = node.properties;
      if (first !== undefined && ts.isSpreadAssignment(first)) found.push(first.getText(file));
    }
    ts.forEachChild(node, visit);
  };
  visit(file);
  return found;
}

/** Whether two objects that one literal made share their hidden class, as V8 itself says. */
function shareTheirClass(literal: string): boolean {
  const script = `const make = (one) => (${literal});
    const [a, b] = [make({ text: 'a' }), make({ text: 'b' })];
    console.log(%HaveSameMap(a, b));`;
  const run = ['--allow-natives-syntax', '--eval', script];
  return execFileSync(process.execPath, run, { encoding: 'utf8' }) === 'true\n';
}

describe('object literals of the built program', () => {
  test('begin with a spread of nothing where they begin with a spread and go on', () => {
    const script = join(dirname(inject('program')), '../dist/program.cjs');
    const spreads = firstSpreads(readFileSync(script, 'latin1'));
    expect(spreads.length).toBeGreaterThan(400);
    expect(spreads.filter((spread) => spread !== '...null')).toEqual([]);
  });

  test('have one hidden class for all that they make when they are written so', () => {
    expect(shareTheirClass('{ ...null, ...one, last: 1 }')).toBe(true);
    expect(shareTheirClass('{ ...null, ...one, text: 1, last: 1 }')).toBe(true);
  });
});
