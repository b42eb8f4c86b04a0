/** What the tests of grading ask: a reference, the surveys of trainees, and nothing else but what a test says. */

import { createHash } from 'node:crypto';
import { builtInTemplates } from '../../src/formats/data/templates.ts';
import type { GradeFilesRequest } from '../../src/tasks/grade/grade-request.ts';

type Asked = Pick<GradeFilesRequest, 'reference' | 'trainees' | 'settings'> &
  Partial<GradeFilesRequest>;

export const gradeRequest = (asked: Asked): GradeFilesRequest => ({
  read: {
    files: [],
    templates: builtInTemplates,
    templateId: 'saloon',
    intake: { plausible: asked.settings.film.measurement },
    vehicle: undefined,
    keepUnknownPanels: false,
  },
  job: undefined,
  rubric: undefined,
  gauge: undefined,
  traineeGauges: new Map(),
  marked: false,
  anonymous: false,
  trainee: undefined,
  ...asked,
});

/** A file of text as the program loads it. */
export const loaded = (name: string, text: string) => ({
  name,
  bytes: new TextEncoder().encode(text),
  sha256: createHash('sha256').update(text).digest('hex'),
});
