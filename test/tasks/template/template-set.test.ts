import { describe, expect, test } from 'vitest';
import { builtInTemplates } from '../../../src/formats/data/templates.ts';
import { noSuchTemplate, templatesInForce } from '../../../src/tasks/template/template-set.ts';
import { plainPanel, plainTemplate } from '../../film/car-builder.ts';

const own = (id: string, file: string) => ({
  ...plainTemplate(plainPanel('lid')),
  id,
  origin: { file, base: null, own: ['lid'] },
});

describe('the templates in force', () => {
  test('are the built-in ones, then the own ones', () => {
    const { value = [] } = templatesInForce(builtInTemplates, [own('bus', 'bus.json')]);
    expect(value.map(({ id }) => id)).toEqual([...builtInTemplates.map(({ id }) => id), 'bus']);
  });

  test('have an own one in the place of the built-in one whose id it has', () => {
    const mine = own('saloon', 'mine.json');
    const { value = [] } = templatesInForce(builtInTemplates, [mine]);
    expect(value).toHaveLength(builtInTemplates.length);
    expect(value[2]).toBe(mine);
  });

  test('cannot be told apart when two files give the same id', () => {
    const { value, diagnostics } = templatesInForce(
      [],
      [own('bus', 'a.json'), own('bus', 'b.json')],
    );
    expect(value).toBeUndefined();
    expect(diagnostics).toMatchObject([
      {
        code: 'settings-invalid',
        message: 'the template "bus" is also in a.json',
        at: { file: 'b.json' },
        hint: 'give one of the two another "id"',
      },
    ]);
  });
});

describe('a name that leads to no template', () => {
  test('on the command line is a wrong command line', () => {
    expect(noSuchTemplate('salon', builtInTemplates, undefined)).toMatchObject({
      code: 'usage-unknown-template',
      hint: 'did you mean "saloon"?',
    });
  });

  test('in a settings file is told on its line', () => {
    const at = { file: 'job.json', line: 4 };
    expect(noSuchTemplate('lorry', builtInTemplates, at)).toMatchObject({
      code: 'settings-invalid',
      message: '"template" is "lorry", and there is no such template',
      at,
      hint: expect.stringMatching(/^one of supermini, .*; a file ends in \.json$/),
    });
  });

  test('by another word for a body class is told the one used here', () => {
    for (const [word, meant] of [
      ['sedan', 'saloon'],
      ['Station Wagon', 'estate'],
      ['pick-up', 'double-cab-pickup'],
    ] as const) {
      expect(noSuchTemplate(word, builtInTemplates, undefined)?.hint).toBe(
        `here that is "${meant}"`,
      );
    }
  });

  test('is nothing to complain of when it leads to one', () => {
    expect(noSuchTemplate('saloon', builtInTemplates, undefined)).toBeUndefined();
  });
});
