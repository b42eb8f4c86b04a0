import { expect, test } from 'vitest';
import { isTemplatePath } from '../../../src/film/template/template-name.ts';

test.each(['own.json', 'OWN.JSON', './own', 'folder/own', 'folder\\own', '-'])(
  '%s names the file of a template',
  (word) => expect(isTemplatePath(word)).toBe(true),
);

test.each(['saloon', 'mid-suv', 'json'])('%s names a template by its id', (word) =>
  expect(isTemplatePath(word)).toBe(false),
);
