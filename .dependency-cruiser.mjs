/**
 * The rooms of src/ and the fences between them: each with a sentence that says why it stands.
 * test/rooms.test.ts plants one violation per fence, and fails when a fence is added without one.
 */

const tradeRooms = ['film', 'correction', 'work', 'training'];

/** What each room may import besides itself; base is seen by all. */
const seenBy = {
  film: [],
  correction: ['film'],
  work: ['film', 'correction'],
  training: ['film'],
  intake: tradeRooms,
  formats: tradeRooms,
  tasks: [...tradeRooms, 'intake', 'formats'],
  report: [...tradeRooms, 'formats', 'tasks', 'intake'],
};

/** The one room (or folder) that may import a package. */
const packageHomes = {
  'csv-parse': 'src/intake',
  zod: 'src/formats',
  'jsonc-parser': 'src/formats',
  'simple-statistics': 'src/base/stats',
  commander: 'src/cli',
  chalk: 'src/cli',
};

const folder = (room) => `^src/${room}/`;

const roomFence = (room, name, comment) => ({
  name,
  comment,
  severity: 'error',
  from: { path: folder(room) },
  to: { path: '^src/', pathNot: [room, 'base', ...seenBy[room]].map(folder) },
});

const packageFence = (name) => ({
  name: `${name}-lives-in-${packageHomes[name].replace('src/', '').replace('/', '-')}`,
  comment: `The package ${name} is imported in ${packageHomes[name]} alone, so that replacing it changes one place.`,
  severity: 'error',
  from: { path: '^src/', pathNot: `^${packageHomes[name]}/` },
  to: { path: `(^|/)node_modules/${name}/` },
});

export default {
  forbidden: [
    {
      name: 'base-imports-nothing-of-ours',
      comment:
        'base is seen by every room and knows nothing about paint, so it imports none of them.',
      severity: 'error',
      from: { path: folder('base') },
      to: { path: '^src/', pathNot: folder('base') },
    },
    roomFence(
      'film',
      'film-sees-base',
      'film says what is known about the paint; how it is cut, worked or written comes after it.',
    ),
    roomFence(
      'correction',
      'correction-sees-film',
      'correction chooses steps within the limits that film states; hours and files come after it.',
    ),
    roomFence(
      'work',
      'work-sees-film-and-correction',
      'work counts hours and money of steps already chosen, and knows no file and no command.',
    ),
    roomFence(
      'training',
      'training-sees-film',
      'training compares surveys with surveys; it plans no correction and reads no file.',
    ),
    roomFence(
      'intake',
      'intake-sees-the-trade',
      'intake turns bytes into readings of the trade rooms, with no settings and no task in sight.',
    ),
    roomFence(
      'formats',
      'formats-sees-the-trade',
      'formats describes settings and records; how an export is read and what is done with it are not its matter.',
    ),
    roomFence(
      'tasks',
      'tasks-see-no-output',
      'a task composes the trade rooms purely; what its result looks like, and on what, it never learns.',
    ),
    roomFence(
      'report',
      'report-writes-nothing',
      'report turns results into blocks and records; the writers of text and files stand behind it.',
    ),
    {
      name: 'report-knows-intake-by-type',
      comment: 'report may name the shapes of intake with `import type`, but reads nothing itself.',
      severity: 'error',
      from: { path: folder('report') },
      to: { path: folder('intake'), dependencyTypesNot: ['type-only'] },
    },
    {
      name: 'render-sees-the-report-model',
      comment:
        'a renderer draws blocks and knows no paint: of report it sees the model and nothing else.',
      severity: 'error',
      from: { path: folder('render') },
      to: { path: '^src/', pathNot: [folder('render'), folder('base'), '^src/report/model\\.ts$'] },
    },
    {
      name: 'no-circles',
      comment: 'files that need each other are one idea in two places; types count too.',
      severity: 'error',
      from: {},
      to: { circular: true },
    },
    {
      name: 'node-lives-in-cli',
      comment: 'only cli touches the world, so every other room can be tested with plain values.',
      severity: 'error',
      from: { path: '^src/', pathNot: folder('cli') },
      to: { dependencyTypes: ['core'] },
    },
    ...Object.keys(packageHomes).map(packageFence),
    {
      name: 'packages-have-a-home',
      comment: 'a package that is on no list of homes is not agreed: add it under Decisions first.',
      severity: 'error',
      from: { path: '^src/' },
      to: {
        path: '(^|/)node_modules/',
        pathNot: Object.keys(packageHomes).map((name) => `(^|/)node_modules/${name}/`),
      },
    },
    {
      name: 'every-import-is-found',
      comment: 'an import that leads nowhere cannot be held to any fence.',
      severity: 'error',
      from: { path: '^src/' },
      to: { couldNotResolve: true },
    },
    {
      name: 'source-never-imports-test',
      comment: 'what is shipped stands without its tests.',
      severity: 'error',
      from: { path: '^src/' },
      to: { path: '^test/' },
    },
    {
      name: 'source-never-imports-samples',
      comment: 'samples are inputs that a person may change or delete; no code leans on them.',
      severity: 'error',
      from: { path: '^src/' },
      to: { path: '^samples/' },
    },
  ],
  options: {
    doNotFollow: { path: '(^|/)node_modules/' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: {
      extensions: ['.ts', '.js', '.mjs', '.json'],
      exportsFields: ['exports'],
      conditionNames: ['import', 'node', 'default'],
    },
  },
};
