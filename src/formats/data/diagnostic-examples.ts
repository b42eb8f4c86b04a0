/**
 * The smallest input that draws each diagnostic, as people are shown it: the files and what is typed.
 * They are the folders of test/errors as text; a test holds the two together.
 */
import type { DiagnosticCode } from '../../base/catalogue.ts';

export type DiagnosticExample = {
  /** What is typed after the program's name. */
  readonly command: string;
  readonly files: readonly { readonly name: string; readonly text: string }[];
};

const example = (
  command: string,
  files: Readonly<Record<string, string>> = {},
): DiagnosticExample => ({
  command,
  files: Object.entries(files).map(([name, text]) => ({ name, text })),
});

export const diagnosticExamples: Readonly<Record<DiagnosticCode, DiagnosticExample>> = {
  'batch-column-unknown': example('batch jobs.csv --command survey', {
    'coupe.csv': 'panel,point,reading_um\nbonnet,1,112\nbonnet,2,114\nbonnet,3,113\n',
    'jobs.csv': 'job,readings,ain\ncoupe,coupe.csv,full\n',
  }),
  'batch-empty': example('batch jobs.csv --command survey', { 'jobs.csv': 'job,readings\n' }),
  'batch-job-incomplete': example('batch jobs.csv --command survey', {
    'jobs.csv': 'job,readings\ncoupe,\n',
  }),
  'batch-job-twice': example('batch jobs.csv --command survey', {
    'jobs.csv': 'job,readings\ncoupe,a.csv\ncoupe,b.csv\n',
  }),
  'batch-left-alone': example('batch a-folder --command survey --workers 1', {
    'coupe.csv': 'panel,point,reading_um\nbonnet,1,112\nbonnet,2,114\nbonnet,3,113\n',
    'hatchback.defects.csv': 'panel,defect,grade\nbonnet,swirl marks,3\n',
    'saloon.xlsx': 'x',
  }),
  'batch-result': example('batch a-folder --command survey --workers 1', {
    'coupe.csv': 'panel,point,reading_um\nbonnet,1,112\nbonnet,2,114\nbonnet,3,113\n',
    'quotes.csv': 'job,seq,command,status,exit,vehicle,error\ncoupe,1,quote,done,0,,\n',
  }),
  'batch-value': example('batch jobs.csv --command plan', {
    'coupe.csv': 'panel,point,reading_um\nbonnet,1,112\nbonnet,2,114\nbonnet,3,113\n',
    'jobs.csv': 'job,readings,aim\ncoupe,coupe.csv,perfect\n',
  }),
  'cell-invalid': example('survey input.csv', {
    'input.csv': 'panel,point,reading_um,place\nbonnet,1,120,egde\nroof,1,118,\n',
  }),
  'character-lost': example('survey input.csv', {
    'input.csv': 'panel,point,reading (?m)\nbonnet,1,120\nroof,1,101\n',
  }),
  'column-missing': example('survey input.csv', {
    'input.csv': 'panel,point,readng_um\nbonnet,1,120\n',
  }),
  'column-repeated': example('survey input.csv', {
    'input.csv': 'panel,point,reading_um,thickness_um\nbonnet,1,120,121\n',
  }),
  'column-unknown': example('survey input.csv', {
    'input.csv':
      'panel,point,reading_um,weather\nbonnet,1,120,rain\nroof,1,118,rain\nboot lid,1,119,sun\n',
  }),
  'column-unnamed': example('read input.csv', {
    'input.csv': 'panel,point,reading_um,\nbonnet,1,120,5\nroof,1,118,2\n',
  }),
  'comment-or-row': example('read input.csv', {
    'input.csv': 'point;panel;reading_um\n#1;bonnet;120\n2;roof;118\n',
  }),
  'compare-common-shift': example('compare before.csv after.csv --marked --template saloon', {
    'after.csv':
      'panel,point,reading_um\nbonnet,1,109.4\nbonnet,2,114.0\nbonnet,3,107.7\nroof,1,111.4\nroof,2,109.0\nroof,3,112.7\nboot lid,1,108.4\nboot lid,2,107.0\nboot lid,3,111.7\n',
    'before.csv':
      'panel,point,reading_um\nbonnet,1,117\nbonnet,2,121\nbonnet,3,115\nroof,1,119\nroof,2,116\nroof,3,120\nboot lid,1,116\nboot lid,2,114\nboot lid,3,119\n',
  }),
  'compare-day-differs': example(
    'compare before.csv after.csv --marked --template saloon --record record.json --date 2026-05-31',
    {
      'after.csv':
        'panel,point,reading_um,time\nroof,1,116,2026-03-31\nroof,2,118,2026-03-31\nroof,3,114,2026-03-31\n',
      'before.csv':
        'panel,point,reading_um,time\nroof,1,118,2026-03-30\nroof,2,121,2026-03-30\nroof,3,116,2026-03-30\n',
    },
  ),
  'compare-files-order': example('compare after.csv before.csv --marked --template saloon', {
    'after.csv':
      'panel,point,reading_um,time\nroof,1,116,2026-03-31\nroof,2,118,2026-03-31\nroof,3,114,2026-03-31\n',
    'before.csv':
      'panel,point,reading_um,time\nroof,1,118,2026-03-30\nroof,2,121,2026-03-30\nroof,3,116,2026-03-30\n',
  }),
  'compare-film-gained': example('compare before.csv after.csv --marked --template saloon', {
    'after.csv': 'panel,point,reading_um\nroof,1,128\nroof,2,130\nroof,3,127\n',
    'before.csv': 'panel,point,reading_um\nroof,1,118\nroof,2,121\nroof,3,116\n',
  }),
  'compare-not-marked': example('compare before.csv after.csv --template saloon -v', {
    'after.csv': 'panel,point,reading_um\nroof,1,116\nroof,2,118\nroof,3,114\n',
    'before.csv': 'panel,point,reading_um\nroof,1,118\nroof,2,121\nroof,3,116\n',
  }),
  'compare-not-recorded': example(
    'compare before.csv after.csv --marked --template saloon --record record.json --date 2026-03-31',
    {
      'after.csv': 'panel,point,reading_um\nroof,1,116\nroof,2,1190\nroof,3,114\n',
      'before.csv': 'panel,point,reading_um\nroof,1,118\nroof,2,121\nroof,3,116\n',
    },
  ),
  'compare-nothing-shared': example('compare before.csv after.csv --marked --template saloon', {
    'after.csv': 'panel,point,reading_um\nboot lid,1,116\nboot lid,2,118\nboot lid,3,114\n',
    'before.csv': 'panel,point,reading_um\nroof,1,118\nroof,2,121\nroof,3,116\n',
  }),
  'compare-one-visit': example('compare before.csv', {
    'before.csv': 'panel,point,reading_um\nroof,1,118\nroof,2,121\nroof,3,116\n',
  }),
  'compare-plan-of-others': example(
    'compare before.csv after.csv --template saloon --marked --plan plan.json',
    {
      'after.csv': 'panel,point,reading_um\nroof,1,116\nroof,2,118\nroof,3,114\n',
      'before.csv': 'panel,point,reading_um\nroof,1,118\nroof,2,121\nroof,3,116\n',
      'plan.json':
        '{\n  "schema": "leastcut/plan/1",\n  "vehicle": null,\n  "inputs": [\n    {\n      "file": "spring.csv",\n      "sha256": "0c5f2a1d9b3e4f60718293a4b5c6d7e8f90123456789abcdef0123456789abcd",\n      "decisions": { "layout": "long" }\n    }\n  ],\n  "panels": [\n    {\n      "panel": "roof",\n      "verdict": "leave",\n      "steps": [],\n      "removal_um": { "median": 0, "high": 0 },\n      "zones": []\n    }\n  ]\n}\n',
    },
  ),
  'compare-points-swapped': example('compare before.csv after.csv --marked --template saloon', {
    'after.csv':
      'panel,point,reading_um\nroof,1,122\nroof,2,109\nroof,3,129\nroof,4,117\nroof,5,119\nbonnet,1,107\nbonnet,2,119\nbonnet,3,115\nbonnet,4,125\nbonnet,5,111\n',
    'before.csv':
      'panel,point,reading_um\nroof,1,108\nroof,2,121\nroof,3,116\nroof,4,127\nroof,5,112\nbonnet,1,124\nbonnet,2,110\nbonnet,3,131\nbonnet,4,118\nbonnet,5,121\n',
  }),
  'compare-record-left-out': example(
    'compare before.csv after.csv --template saloon --marked --plan plan.json',
    {
      'after.csv': 'panel,point,reading_um\nroof,1,116\nroof,2,118\nroof,3,114\n',
      'before.csv': 'panel,point,reading_um\nroof,1,118\nroof,2,121\nroof,3,116\n',
      'plan.json':
        '{\n  "schema": "leastcut/plan/1",\n  "vehicle": null,\n  "panels": [\n    {\n      "panel": "roof",\n      "verdict": "leave",\n      "steps": [],\n      "removal_um": { "median": 0, "high": 0 },\n      "facts": {\n        "recorded_um": {\n          "value": { "value": 3, "sd": 0.5 },\n          "origin": "job",\n          "where": "record.json:7"\n        }\n      },\n      "zones": []\n    }\n  ]\n}\n',
    },
  ),
  'compare-spots-left-out': example(
    'compare before.csv after.csv --template saloon --marked --plan plan.json',
    {
      'after.csv': 'panel,point,reading_um\nroof,1,116\nroof,2,118\nroof,3,114\n',
      'before.csv': 'panel,point,reading_um\nroof,1,118\nroof,2,121\nroof,3,116\n',
      'plan.json':
        '{\n  "schema": "leastcut/plan/1",\n  "version": "0.1.0",\n  "command": "plan",\n  "vehicle": null,\n  "inputs": [\n    {\n      "file": "test/errors/compare-spots-left-out/before.csv",\n      "sha256": "8069236edb30b339aae5a47d38883199c819d2153c1640dc6855000a72d00d5c",\n      "decisions": {\n        "encoding": "utf-8",\n        "delimiter": ",",\n        "decimal": ".",\n        "layout": "long",\n        "unit": "um",\n        "header_line": 1,\n        "columns": {\n          "panel": [\n            "panel"\n          ],\n          "point": [\n            "point"\n          ],\n          "reading": [\n            "reading_um"\n          ]\n        },\n        "evidence": [\n          "comma as delimiter, it alone makes line 1 a header",\n          "the header says µm",\n          "no reading of 3 needs a decimal mark"\n        ],\n        "metadata": []\n      }\n    },\n    {\n      "file": "test/errors/compare-spots-left-out/spots.csv",\n      "sha256": "660b8b12e2c716c74dd9eca03c7e03dcaaf6a7af8418c6cf57a8db29770d9f18",\n      "decisions": null\n    }\n  ],\n  "assumptions": [\n    {\n      "code": "finish",\n      "text": "clear over base, as nothing says otherwise",\n      "origin": "built-in"\n    },\n    {\n      "code": "galvanised",\n      "text": "steel not galvanised",\n      "origin": "built-in"\n    },\n    {\n      "code": "history",\n      "text": "earlier work unknown: 2 µm of topcoat and 4 µm of the life limit allowed for it",\n      "origin": "built-in"\n    },\n    {\n      "code": "risk",\n      "text": "risk 5.0 % a panel",\n      "origin": "built-in"\n    },\n    {\n      "code": "gauge-not-verified",\n      "text": "gauge not verified: ± 1 µm ± 2 % of the film assumed",\n      "origin": "built-in"\n    },\n    {\n      "code": "aim",\n      "text": "aim correct",\n      "origin": "built-in"\n    },\n    {\n      "code": "machines",\n      "text": "a shop with rotary, da, da-small, hand and every pad and product",\n      "origin": "built-in"\n    },\n    {\n      "code": "scope",\n      "text": "whole job: wheels on, full decontamination, wax; usual dirt, 1 person, 8 h a day",\n      "origin": "built-in"\n    },\n    {\n      "code": "temperature",\n      "text": "panel and room at 20 °C",\n      "origin": "built-in"\n    },\n    {\n      "code": "defects",\n      "text": "swirl marks of grade 3 on every panel",\n      "origin": "built-in"\n    }\n  ],\n  "settings": [\n    {\n      "name": "template",\n      "value": "saloon",\n      "origin": "flag",\n      "where": "--template"\n    }\n  ],\n  "diagnostics": [],\n  "template": "saloon",\n  "aim": "correct",\n  "risk_pct": 5,\n  "panels": [\n    {\n      "panel": "bonnet",\n      "verdict": "leave",\n      "steps": [],\n      "removal_um": {\n        "median": 0,\n        "mean": 0,\n        "low": 0,\n        "high": 0\n      },\n      "correction": {\n        "aimed_pct": 85,\n        "expected_pct": 0\n      },\n      "risk_prob": null,\n      "risk_if_thin_prob": null,\n      "already_prob": null,\n      "budget_um": 0,\n      "bound_by": "no-data",\n      "facts": {\n        "finish": {\n          "value": "clear-over-base",\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "taken_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "recorded_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "clear_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "under_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "galvanised": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "covered": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "clear_coat_failure": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "painted_days_ago": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        }\n      },\n      "provisional": true,\n      "reasons": [\n        {\n          "code": "limit-no-data",\n          "text": "nothing may go: nothing is known of it until it is read",\n          "value": 0\n        }\n      ],\n      "cautions": [],\n      "local": [],\n      "why": null,\n      "zones": []\n    },\n    {\n      "panel": "wing-front-right",\n      "verdict": "leave",\n      "steps": [],\n      "removal_um": {\n        "median": 0,\n        "mean": 0,\n        "low": 0,\n        "high": 0\n      },\n      "correction": {\n        "aimed_pct": 85,\n        "expected_pct": 0\n      },\n      "risk_prob": null,\n      "risk_if_thin_prob": null,\n      "already_prob": null,\n      "budget_um": 0,\n      "bound_by": "no-data",\n      "facts": {\n        "finish": {\n          "value": "clear-over-base",\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "taken_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "recorded_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "clear_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "under_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "galvanised": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "covered": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "clear_coat_failure": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "painted_days_ago": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        }\n      },\n      "provisional": true,\n      "reasons": [\n        {\n          "code": "limit-no-data",\n          "text": "nothing may go: nothing is known of it until it is read",\n          "value": 0\n        }\n      ],\n      "cautions": [],\n      "local": [],\n      "why": null,\n      "zones": []\n    },\n    {\n      "panel": "mirror-right",\n      "verdict": "leave",\n      "steps": [],\n      "removal_um": {\n        "median": 0,\n        "mean": 0,\n        "low": 0,\n        "high": 0\n      },\n      "correction": {\n        "aimed_pct": 85,\n        "expected_pct": 0\n      },\n      "risk_prob": null,\n      "risk_if_thin_prob": null,\n      "already_prob": null,\n      "budget_um": 0,\n      "bound_by": "no-data",\n      "facts": {\n        "finish": {\n          "value": "clear-over-base",\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "taken_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "recorded_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "clear_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "under_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "galvanised": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "covered": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "clear_coat_failure": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "painted_days_ago": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        }\n      },\n      "provisional": true,\n      "reasons": [\n        {\n          "code": "limit-no-data",\n          "text": "nothing may go: a gauge for metal reads no film on plastic",\n          "value": 0\n        }\n      ],\n      "cautions": [],\n      "local": [],\n      "why": null,\n      "zones": []\n    },\n    {\n      "panel": "door-front-right",\n      "verdict": "leave",\n      "steps": [],\n      "removal_um": {\n        "median": 0,\n        "mean": 0,\n        "low": 0,\n        "high": 0\n      },\n      "correction": {\n        "aimed_pct": 85,\n        "expected_pct": 0\n      },\n      "risk_prob": null,\n      "risk_if_thin_prob": null,\n      "already_prob": null,\n      "budget_um": 0,\n      "bound_by": "no-data",\n      "facts": {\n        "finish": {\n          "value": "clear-over-base",\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "taken_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "recorded_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "clear_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "under_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "galvanised": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "covered": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "clear_coat_failure": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "painted_days_ago": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        }\n      },\n      "provisional": true,\n      "reasons": [\n        {\n          "code": "limit-no-data",\n          "text": "nothing may go: nothing is known of it until it is read",\n          "value": 0\n        }\n      ],\n      "cautions": [],\n      "local": [],\n      "why": null,\n      "zones": []\n    },\n    {\n      "panel": "sill-right",\n      "verdict": "leave",\n      "steps": [],\n      "removal_um": {\n        "median": 0,\n        "mean": 0,\n        "low": 0,\n        "high": 0\n      },\n      "correction": {\n        "aimed_pct": 85,\n        "expected_pct": 0\n      },\n      "risk_prob": null,\n      "risk_if_thin_prob": null,\n      "already_prob": null,\n      "budget_um": 0,\n      "bound_by": "no-data",\n      "facts": {\n        "finish": {\n          "value": "clear-over-base",\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "taken_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "recorded_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "clear_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "under_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "galvanised": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "covered": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "clear_coat_failure": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "painted_days_ago": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        }\n      },\n      "provisional": true,\n      "reasons": [\n        {\n          "code": "limit-no-data",\n          "text": "nothing may go: nothing is known of it until it is read",\n          "value": 0\n        }\n      ],\n      "cautions": [],\n      "local": [],\n      "why": null,\n      "zones": []\n    },\n    {\n      "panel": "door-rear-right",\n      "verdict": "leave",\n      "steps": [],\n      "removal_um": {\n        "median": 0,\n        "mean": 0,\n        "low": 0,\n        "high": 0\n      },\n      "correction": {\n        "aimed_pct": 85,\n        "expected_pct": 0\n      },\n      "risk_prob": null,\n      "risk_if_thin_prob": null,\n      "already_prob": null,\n      "budget_um": 0,\n      "bound_by": "no-data",\n      "facts": {\n        "finish": {\n          "value": "clear-over-base",\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "taken_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "recorded_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "clear_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "under_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "galvanised": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "covered": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "clear_coat_failure": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "painted_days_ago": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        }\n      },\n      "provisional": true,\n      "reasons": [\n        {\n          "code": "limit-no-data",\n          "text": "nothing may go: nothing is known of it until it is read",\n          "value": 0\n        }\n      ],\n      "cautions": [],\n      "local": [],\n      "why": null,\n      "zones": []\n    },\n    {\n      "panel": "rail-right",\n      "verdict": "leave",\n      "steps": [],\n      "removal_um": {\n        "median": 0,\n        "mean": 0,\n        "low": 0,\n        "high": 0\n      },\n      "correction": {\n        "aimed_pct": 85,\n        "expected_pct": 0\n      },\n      "risk_prob": null,\n      "risk_if_thin_prob": null,\n      "already_prob": null,\n      "budget_um": 0,\n      "bound_by": "no-data",\n      "facts": {\n        "finish": {\n          "value": "clear-over-base",\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "taken_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "recorded_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "clear_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "under_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "galvanised": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "covered": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "clear_coat_failure": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "painted_days_ago": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        }\n      },\n      "provisional": true,\n      "reasons": [\n        {\n          "code": "limit-no-data",\n          "text": "nothing may go: nothing is known of it until it is read",\n          "value": 0\n        }\n      ],\n      "cautions": [],\n      "local": [],\n      "why": null,\n      "zones": []\n    },\n    {\n      "panel": "quarter-right",\n      "verdict": "leave",\n      "steps": [],\n      "removal_um": {\n        "median": 0,\n        "mean": 0,\n        "low": 0,\n        "high": 0\n      },\n      "correction": {\n        "aimed_pct": 85,\n        "expected_pct": 0\n      },\n      "risk_prob": null,\n      "risk_if_thin_prob": null,\n      "already_prob": null,\n      "budget_um": 0,\n      "bound_by": "no-data",\n      "facts": {\n        "finish": {\n          "value": "clear-over-base",\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "taken_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "recorded_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "clear_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "under_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "galvanised": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "covered": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "clear_coat_failure": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "painted_days_ago": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        }\n      },\n      "provisional": true,\n      "reasons": [\n        {\n          "code": "limit-no-data",\n          "text": "nothing may go: nothing is known of it until it is read",\n          "value": 0\n        }\n      ],\n      "cautions": [],\n      "local": [],\n      "why": null,\n      "zones": []\n    },\n    {\n      "panel": "boot",\n      "verdict": "leave",\n      "steps": [],\n      "removal_um": {\n        "median": 0,\n        "mean": 0,\n        "low": 0,\n        "high": 0\n      },\n      "correction": {\n        "aimed_pct": 85,\n        "expected_pct": 0\n      },\n      "risk_prob": null,\n      "risk_if_thin_prob": null,\n      "already_prob": null,\n      "budget_um": 0,\n      "bound_by": "no-data",\n      "facts": {\n        "finish": {\n          "value": "clear-over-base",\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "taken_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "recorded_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "clear_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "under_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "galvanised": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "covered": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "clear_coat_failure": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "painted_days_ago": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        }\n      },\n      "provisional": true,\n      "reasons": [\n        {\n          "code": "limit-no-data",\n          "text": "nothing may go: nothing is known of it until it is read",\n          "value": 0\n        }\n      ],\n      "cautions": [],\n      "local": [],\n      "why": null,\n      "zones": []\n    },\n    {\n      "panel": "bumper-rear",\n      "verdict": "leave",\n      "steps": [],\n      "removal_um": {\n        "median": 0,\n        "mean": 0,\n        "low": 0,\n        "high": 0\n      },\n      "correction": {\n        "aimed_pct": 85,\n        "expected_pct": 0\n      },\n      "risk_prob": null,\n      "risk_if_thin_prob": null,\n      "already_prob": null,\n      "budget_um": 0,\n      "bound_by": "no-data",\n      "facts": {\n        "finish": {\n          "value": "clear-over-base",\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "taken_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "recorded_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "clear_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "under_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "galvanised": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "covered": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "clear_coat_failure": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "painted_days_ago": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        }\n      },\n      "provisional": true,\n      "reasons": [\n        {\n          "code": "limit-no-data",\n          "text": "nothing may go: a gauge for metal reads no film on plastic",\n          "value": 0\n        }\n      ],\n      "cautions": [],\n      "local": [],\n      "why": null,\n      "zones": []\n    },\n    {\n      "panel": "quarter-left",\n      "verdict": "leave",\n      "steps": [],\n      "removal_um": {\n        "median": 0,\n        "mean": 0,\n        "low": 0,\n        "high": 0\n      },\n      "correction": {\n        "aimed_pct": 85,\n        "expected_pct": 0\n      },\n      "risk_prob": null,\n      "risk_if_thin_prob": null,\n      "already_prob": null,\n      "budget_um": 0,\n      "bound_by": "no-data",\n      "facts": {\n        "finish": {\n          "value": "clear-over-base",\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "taken_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "recorded_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "clear_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "under_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "galvanised": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "covered": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "clear_coat_failure": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "painted_days_ago": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        }\n      },\n      "provisional": true,\n      "reasons": [\n        {\n          "code": "limit-no-data",\n          "text": "nothing may go: nothing is known of it until it is read",\n          "value": 0\n        }\n      ],\n      "cautions": [],\n      "local": [],\n      "why": null,\n      "zones": []\n    },\n    {\n      "panel": "rail-left",\n      "verdict": "leave",\n      "steps": [],\n      "removal_um": {\n        "median": 0,\n        "mean": 0,\n        "low": 0,\n        "high": 0\n      },\n      "correction": {\n        "aimed_pct": 85,\n        "expected_pct": 0\n      },\n      "risk_prob": null,\n      "risk_if_thin_prob": null,\n      "already_prob": null,\n      "budget_um": 0,\n      "bound_by": "no-data",\n      "facts": {\n        "finish": {\n          "value": "clear-over-base",\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "taken_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "recorded_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "clear_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "under_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "galvanised": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "covered": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "clear_coat_failure": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "painted_days_ago": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        }\n      },\n      "provisional": true,\n      "reasons": [\n        {\n          "code": "limit-no-data",\n          "text": "nothing may go: nothing is known of it until it is read",\n          "value": 0\n        }\n      ],\n      "cautions": [],\n      "local": [],\n      "why": null,\n      "zones": []\n    },\n    {\n      "panel": "door-rear-left",\n      "verdict": "leave",\n      "steps": [],\n      "removal_um": {\n        "median": 0,\n        "mean": 0,\n        "low": 0,\n        "high": 0\n      },\n      "correction": {\n        "aimed_pct": 85,\n        "expected_pct": 0\n      },\n      "risk_prob": null,\n      "risk_if_thin_prob": null,\n      "already_prob": null,\n      "budget_um": 0,\n      "bound_by": "no-data",\n      "facts": {\n        "finish": {\n          "value": "clear-over-base",\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "taken_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "recorded_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "clear_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "under_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "galvanised": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "covered": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "clear_coat_failure": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "painted_days_ago": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        }\n      },\n      "provisional": true,\n      "reasons": [\n        {\n          "code": "limit-no-data",\n          "text": "nothing may go: nothing is known of it until it is read",\n          "value": 0\n        }\n      ],\n      "cautions": [],\n      "local": [],\n      "why": null,\n      "zones": []\n    },\n    {\n      "panel": "sill-left",\n      "verdict": "leave",\n      "steps": [],\n      "removal_um": {\n        "median": 0,\n        "mean": 0,\n        "low": 0,\n        "high": 0\n      },\n      "correction": {\n        "aimed_pct": 85,\n        "expected_pct": 0\n      },\n      "risk_prob": null,\n      "risk_if_thin_prob": null,\n      "already_prob": null,\n      "budget_um": 0,\n      "bound_by": "no-data",\n      "facts": {\n        "finish": {\n          "value": "clear-over-base",\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "taken_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "recorded_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "clear_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "under_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "galvanised": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "covered": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "clear_coat_failure": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "painted_days_ago": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        }\n      },\n      "provisional": true,\n      "reasons": [\n        {\n          "code": "limit-no-data",\n          "text": "nothing may go: nothing is known of it until it is read",\n          "value": 0\n        }\n      ],\n      "cautions": [],\n      "local": [],\n      "why": null,\n      "zones": []\n    },\n    {\n      "panel": "door-front-left",\n      "verdict": "leave",\n      "steps": [],\n      "removal_um": {\n        "median": 0,\n        "mean": 0,\n        "low": 0,\n        "high": 0\n      },\n      "correction": {\n        "aimed_pct": 85,\n        "expected_pct": 0\n      },\n      "risk_prob": null,\n      "risk_if_thin_prob": null,\n      "already_prob": null,\n      "budget_um": 0,\n      "bound_by": "no-data",\n      "facts": {\n        "finish": {\n          "value": "clear-over-base",\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "taken_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "recorded_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "clear_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "under_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "galvanised": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "covered": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "clear_coat_failure": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "painted_days_ago": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        }\n      },\n      "provisional": true,\n      "reasons": [\n        {\n          "code": "limit-no-data",\n          "text": "nothing may go: nothing is known of it until it is read",\n          "value": 0\n        }\n      ],\n      "cautions": [],\n      "local": [],\n      "why": null,\n      "zones": []\n    },\n    {\n      "panel": "mirror-left",\n      "verdict": "leave",\n      "steps": [],\n      "removal_um": {\n        "median": 0,\n        "mean": 0,\n        "low": 0,\n        "high": 0\n      },\n      "correction": {\n        "aimed_pct": 85,\n        "expected_pct": 0\n      },\n      "risk_prob": null,\n      "risk_if_thin_prob": null,\n      "already_prob": null,\n      "budget_um": 0,\n      "bound_by": "no-data",\n      "facts": {\n        "finish": {\n          "value": "clear-over-base",\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "taken_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "recorded_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "clear_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "under_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "galvanised": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "covered": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "clear_coat_failure": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "painted_days_ago": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        }\n      },\n      "provisional": true,\n      "reasons": [\n        {\n          "code": "limit-no-data",\n          "text": "nothing may go: a gauge for metal reads no film on plastic",\n          "value": 0\n        }\n      ],\n      "cautions": [],\n      "local": [],\n      "why": null,\n      "zones": []\n    },\n    {\n      "panel": "wing-front-left",\n      "verdict": "leave",\n      "steps": [],\n      "removal_um": {\n        "median": 0,\n        "mean": 0,\n        "low": 0,\n        "high": 0\n      },\n      "correction": {\n        "aimed_pct": 85,\n        "expected_pct": 0\n      },\n      "risk_prob": null,\n      "risk_if_thin_prob": null,\n      "already_prob": null,\n      "budget_um": 0,\n      "bound_by": "no-data",\n      "facts": {\n        "finish": {\n          "value": "clear-over-base",\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "taken_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "recorded_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "clear_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "under_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "galvanised": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "covered": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "clear_coat_failure": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "painted_days_ago": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        }\n      },\n      "provisional": true,\n      "reasons": [\n        {\n          "code": "limit-no-data",\n          "text": "nothing may go: nothing is known of it until it is read",\n          "value": 0\n        }\n      ],\n      "cautions": [],\n      "local": [],\n      "why": null,\n      "zones": []\n    },\n    {\n      "panel": "bumper-front",\n      "verdict": "leave",\n      "steps": [],\n      "removal_um": {\n        "median": 0,\n        "mean": 0,\n        "low": 0,\n        "high": 0\n      },\n      "correction": {\n        "aimed_pct": 85,\n        "expected_pct": 0\n      },\n      "risk_prob": null,\n      "risk_if_thin_prob": null,\n      "already_prob": null,\n      "budget_um": 0,\n      "bound_by": "no-data",\n      "facts": {\n        "finish": {\n          "value": "clear-over-base",\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "taken_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "recorded_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "clear_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "under_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "galvanised": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "covered": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "clear_coat_failure": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "painted_days_ago": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        }\n      },\n      "provisional": true,\n      "reasons": [\n        {\n          "code": "limit-no-data",\n          "text": "nothing may go: a gauge for metal reads no film on plastic",\n          "value": 0\n        }\n      ],\n      "cautions": [],\n      "local": [],\n      "why": null,\n      "zones": []\n    },\n    {\n      "panel": "roof",\n      "verdict": "leave",\n      "steps": [],\n      "removal_um": {\n        "median": 0,\n        "mean": 0,\n        "low": 0,\n        "high": 0\n      },\n      "correction": {\n        "aimed_pct": 85,\n        "expected_pct": 0\n      },\n      "risk_prob": 0.053356,\n      "risk_if_thin_prob": 0.220958,\n      "already_prob": 0.053356,\n      "budget_um": 0,\n      "bound_by": "near-line",\n      "facts": {\n        "finish": {\n          "value": "clear-over-base",\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "taken_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "recorded_um": {\n          "value": {\n            "value": 1.166667,\n            "sd": 1.060877\n          },\n          "origin": "readings",\n          "where": "test spots"\n        },\n        "clear_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "under_um": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "galvanised": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "covered": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "clear_coat_failure": {\n          "value": false,\n          "origin": "built-in",\n          "where": "built-in"\n        },\n        "painted_days_ago": {\n          "value": null,\n          "origin": "built-in",\n          "where": "built-in"\n        }\n      },\n      "provisional": false,\n      "reasons": [\n        {\n          "code": "limit-near-line",\n          "text": "nothing may go: near its line: clear on the thinnest 5 %: 32.7 ± 4.6 µm expected if original, 20.7 ± 4.6 µm if cut-back (6.6 %), 22.3 must stay",\n          "value": 0\n        }\n      ],\n      "cautions": [],\n      "local": [],\n      "why": null,\n      "zones": []\n    }\n  ],\n  "car": {\n    "expected_panels_below_floor": 0.053356,\n    "panels_below_floor_already": 0.053356\n  },\n  "test_spots": [\n    {\n      "panel": null,\n      "trials": 1,\n      "hardness": {\n        "factor": 0.902497,\n        "low": 0.547405,\n        "high": 1.487932\n      },\n      "depth_scale": {\n        "factor": 1.055998,\n        "low": 0.576336,\n        "high": 1.934861\n      },\n      "provisional": false\n    }\n  ],\n  "time": {\n    "p50_h": 0,\n    "p80_h": 0,\n    "p95_h": 0\n  },\n  "vibration_points": 0,\n  "materials": [],\n  "order": [\n    {\n      "stage": "record",\n      "text": "take in, record the condition"\n    },\n    {\n      "stage": "wheels",\n      "text": "wheels: barrel, face, then tyre"\n    },\n    {\n      "stage": "shuts",\n      "text": "door shuts"\n    },\n    {\n      "stage": "pre-wash",\n      "text": "pre-wash the dirtiest lower parts, foam over all, rinse"\n    },\n    {\n      "stage": "wash",\n      "text": "two-bucket wash from the top down, rinse"\n    },\n    {\n      "stage": "iron",\n      "text": "iron remover, rinse"\n    },\n    {\n      "stage": "tar",\n      "text": "tar remover low and rear"\n    },\n    {\n      "stage": "wash-again",\n      "text": "wash again: solvent off before clay"\n    },\n    {\n      "stage": "clay",\n      "text": "clay, rinse"\n    },\n    {\n      "stage": "dry",\n      "text": "dry, blow out the gaps"\n    },\n    {\n      "stage": "inspect",\n      "text": "inspect by light"\n    },\n    {\n      "stage": "read",\n      "text": "verify the gauge, read"\n    },\n    {\n      "stage": "mask",\n      "text": "mask the trim"\n    },\n    {\n      "stage": "test-spot",\n      "text": "test spot: wipe, inspect"\n    },\n    {\n      "stage": "cut",\n      "text": "cut: roof, horizontals, upper sides, low"\n    },\n    {\n      "stage": "check",\n      "text": "wipe, inspect, re-read marked points cool"\n    },\n    {\n      "stage": "refine",\n      "text": "refine"\n    },\n    {\n      "stage": "finish",\n      "text": "finish"\n    },\n    {\n      "stage": "unmask-dust",\n      "text": "unmask, dust out"\n    },\n    {\n      "stage": "panel-wipe",\n      "text": "panel wipe"\n    },\n    {\n      "stage": "remeasure",\n      "text": "remeasure, verify the gauge: never after protection"\n    },\n    {\n      "stage": "glass-first",\n      "text": "glass first pass, tyres, wheels"\n    },\n    {\n      "stage": "wax",\n      "text": "protection: wax"\n    },\n    {\n      "stage": "glass-last",\n      "text": "glass, last"\n    },\n    {\n      "stage": "final",\n      "text": "final inspection by eye"\n    },\n    {\n      "stage": "hand-over",\n      "text": "hand over"\n    }\n  ],\n  "scope": {\n    "wheels": "on",\n    "shuts": true,\n    "decontamination": "full",\n    "trim": false,\n    "engine_bay": false,\n    "interior": false,\n    "glass": true,\n    "protection": "wax",\n    "arrival": "usual",\n    "hands": 1,\n    "hours_per_day": 8\n  },\n  "job_time": {\n    "p50_h": 5.156863,\n    "p80_h": 6.181297,\n    "p95_h": 7.348255\n  },\n  "stages": [\n    {\n      "stage": "record",\n      "text": "take in, record the condition",\n      "part": "rest",\n      "skill": "survey",\n      "mean_min": 15.833333,\n      "p50_min": 15.470589,\n      "sd_min": 2.763854,\n      "wait_min": 0,\n      "spread_pct": 4.934678,\n      "materials": []\n    },\n    {\n      "stage": "wheels",\n      "text": "wheels: barrel, face, then tyre",\n      "part": "rest",\n      "skill": "wash",\n      "mean_min": 32.666667,\n      "p50_min": 31.918267,\n      "sd_min": 5.26745,\n      "wait_min": 0,\n      "spread_pct": 10.312782,\n      "materials": [\n        {\n          "id": "wheel-cleaner",\n          "material": "wheel cleaner",\n          "quantity": 240,\n          "unit": "ml"\n        }\n      ]\n    },\n    {\n      "stage": "shuts",\n      "text": "door shuts",\n      "part": "rest",\n      "skill": "wash",\n      "mean_min": 12.666667,\n      "p50_min": 12.376471,\n      "sd_min": 2.211083,\n      "wait_min": 0,\n      "spread_pct": 3.934306,\n      "materials": []\n    },\n    {\n      "stage": "pre-wash",\n      "text": "pre-wash the dirtiest lower parts, foam over all, rinse",\n      "part": "rest",\n      "skill": "wash",\n      "mean_min": 12.666667,\n      "p50_min": 12.376471,\n      "sd_min": 2.211083,\n      "wait_min": 0,\n      "spread_pct": 3.934306,\n      "materials": [\n        {\n          "id": "pre-wash",\n          "material": "pre-wash foam",\n          "quantity": 81.6,\n          "unit": "ml"\n        }\n      ]\n    },\n    {\n      "stage": "wash",\n      "text": "two-bucket wash from the top down, rinse",\n      "part": "rest",\n      "skill": "wash",\n      "mean_min": 30.833333,\n      "p50_min": 30.126936,\n      "sd_min": 4.682372,\n      "wait_min": 0,\n      "spread_pct": 9.687125,\n      "materials": [\n        {\n          "id": "shampoo",\n          "material": "shampoo",\n          "quantity": 40.8,\n          "unit": "ml"\n        }\n      ]\n    },\n    {\n      "stage": "iron",\n      "text": "iron remover, rinse",\n      "part": "rest",\n      "skill": "wash",\n      "mean_min": 12.666667,\n      "p50_min": 12.376471,\n      "sd_min": 2.211083,\n      "wait_min": 5,\n      "spread_pct": 3.934306,\n      "materials": [\n        {\n          "id": "iron-remover",\n          "material": "iron remover",\n          "quantity": 272,\n          "unit": "ml"\n        }\n      ]\n    },\n    {\n      "stage": "tar",\n      "text": "tar remover low and rear",\n      "part": "rest",\n      "skill": "wash",\n      "mean_min": 13.5,\n      "p50_min": 13.190712,\n      "sd_min": 3.005946,\n      "wait_min": 0,\n      "spread_pct": 4.235193,\n      "materials": [\n        {\n          "id": "tar-remover",\n          "material": "tar remover",\n          "quantity": 68,\n          "unit": "ml"\n        }\n      ]\n    },\n    {\n      "stage": "wash-again",\n      "text": "wash again: solvent off before clay",\n      "part": "rest",\n      "skill": "wash",\n      "mean_min": 19,\n      "p50_min": 18.564706,\n      "sd_min": 3.316625,\n      "wait_min": 0,\n      "spread_pct": 5.941768,\n      "materials": [\n        {\n          "id": "shampoo",\n          "material": "shampoo",\n          "quantity": 40.8,\n          "unit": "ml"\n        }\n      ]\n    },\n    {\n      "stage": "clay",\n      "text": "clay, rinse",\n      "part": "rest",\n      "skill": "wash",\n      "mean_min": 43.333333,\n      "p50_min": 42.340558,\n      "sd_min": 9.106948,\n      "wait_min": 0,\n      "spread_pct": 14.187341,\n      "materials": [\n        {\n          "id": "clay",\n          "material": "clay blocks",\n          "quantity": 0.333333,\n          "unit": "pieces"\n        }\n      ]\n    },\n    {\n      "stage": "dry",\n      "text": "dry, blow out the gaps",\n      "part": "rest",\n      "skill": "wash",\n      "mean_min": 19,\n      "p50_min": 18.564706,\n      "sd_min": 3.316625,\n      "wait_min": 0,\n      "spread_pct": 5.941768,\n      "materials": []\n    },\n    {\n      "stage": "glass-first",\n      "text": "glass first pass, tyres, wheels",\n      "part": "rest",\n      "skill": "wash",\n      "mean_min": 12.666667,\n      "p50_min": 12.376471,\n      "sd_min": 2.211083,\n      "wait_min": 0,\n      "spread_pct": 3.934306,\n      "materials": [\n        {\n          "id": "glass-cleaner",\n          "material": "glass cleaner",\n          "quantity": 30,\n          "unit": "ml"\n        },\n        {\n          "id": "tyre-dressing",\n          "material": "tyre dressing",\n          "quantity": 40,\n          "unit": "ml"\n        }\n      ]\n    },\n    {\n      "stage": "wax",\n      "text": "protection: wax",\n      "part": "rest",\n      "skill": "protect",\n      "mean_min": 46.666667,\n      "p50_min": 45.597524,\n      "sd_min": 7.45356,\n      "wait_min": 15,\n      "spread_pct": 14.907538,\n      "materials": [\n        {\n          "id": "wax",\n          "material": "wax",\n          "quantity": 27.2,\n          "unit": "ml"\n        }\n      ]\n    },\n    {\n      "stage": "glass-last",\n      "text": "glass, last",\n      "part": "rest",\n      "skill": "wash",\n      "mean_min": 12.666667,\n      "p50_min": 12.376471,\n      "sd_min": 2.211083,\n      "wait_min": 0,\n      "spread_pct": 3.934306,\n      "materials": [\n        {\n          "id": "glass-cleaner",\n          "material": "glass cleaner",\n          "quantity": 30,\n          "unit": "ml"\n        }\n      ]\n    },\n    {\n      "stage": "final",\n      "text": "final inspection by eye",\n      "part": "rest",\n      "skill": "survey",\n      "mean_min": 15.833333,\n      "p50_min": 15.470589,\n      "sd_min": 2.763854,\n      "wait_min": 0,\n      "spread_pct": 4.934678,\n      "materials": []\n    },\n    {\n      "stage": "hand-over",\n      "text": "hand over",\n      "part": "rest",\n      "skill": "survey",\n      "mean_min": 16.666667,\n      "p50_min": 16.28483,\n      "sd_min": 3.563483,\n      "wait_min": 0,\n      "spread_pct": 5.245598,\n      "materials": []\n    }\n  ],\n  "time_spread": {\n    "stages_pct": 2.919778,\n    "pace_pct": 48.540111,\n    "job_pct": 48.540111\n  },\n  "days": [\n    {\n      "day": 1,\n      "hours_h": 5.156863,\n      "stages": [\n        {\n          "stage": "record",\n          "clock_min": 15.470589,\n          "panels": []\n        },\n        {\n          "stage": "wheels",\n          "clock_min": 31.918267,\n          "panels": []\n        },\n        {\n          "stage": "shuts",\n          "clock_min": 12.376471,\n          "panels": []\n        },\n        {\n          "stage": "pre-wash",\n          "clock_min": 12.376471,\n          "panels": []\n        },\n        {\n          "stage": "wash",\n          "clock_min": 30.126936,\n          "panels": []\n        },\n        {\n          "stage": "iron",\n          "clock_min": 12.376471,\n          "panels": []\n        },\n        {\n          "stage": "tar",\n          "clock_min": 13.190712,\n          "panels": []\n        },\n        {\n          "stage": "wash-again",\n          "clock_min": 18.564706,\n          "panels": []\n        },\n        {\n          "stage": "clay",\n          "clock_min": 42.340558,\n          "panels": []\n        },\n        {\n          "stage": "dry",\n          "clock_min": 18.564706,\n          "panels": []\n        },\n        {\n          "stage": "glass-first",\n          "clock_min": 12.376471,\n          "panels": []\n        },\n        {\n          "stage": "wax",\n          "clock_min": 45.597524,\n          "panels": []\n        },\n        {\n          "stage": "glass-last",\n          "clock_min": 12.376471,\n          "panels": []\n        },\n        {\n          "stage": "final",\n          "clock_min": 15.470589,\n          "panels": []\n        },\n        {\n          "stage": "hand-over",\n          "clock_min": 16.28483,\n          "panels": []\n        }\n      ],\n      "points": [\n        0\n      ],\n      "a8_m_per_s2": 0,\n      "action_passed": false\n    }\n  ],\n  "days_p80": 1,\n  "job_materials": [\n    {\n      "id": "wheel-cleaner",\n      "material": "wheel cleaner",\n      "quantity": 240,\n      "unit": "ml"\n    },\n    {\n      "id": "pre-wash",\n      "material": "pre-wash foam",\n      "quantity": 81.6,\n      "unit": "ml"\n    },\n    {\n      "id": "shampoo",\n      "material": "shampoo",\n      "quantity": 81.6,\n      "unit": "ml"\n    },\n    {\n      "id": "iron-remover",\n      "material": "iron remover",\n      "quantity": 272,\n      "unit": "ml"\n    },\n    {\n      "id": "tar-remover",\n      "material": "tar remover",\n      "quantity": 68,\n      "unit": "ml"\n    },\n    {\n      "id": "clay",\n      "material": "clay blocks",\n      "quantity": 1,\n      "unit": "pieces"\n    },\n    {\n      "id": "glass-cleaner",\n      "material": "glass cleaner",\n      "quantity": 60,\n      "unit": "ml"\n    },\n    {\n      "id": "tyre-dressing",\n      "material": "tyre dressing",\n      "quantity": 40,\n      "unit": "ml"\n    },\n    {\n      "id": "wax",\n      "material": "wax",\n      "quantity": 27.2,\n      "unit": "ml"\n    }\n  ],\n  "pads": [],\n  "towel_loads": 0,\n  "history": null,\n  "cautions": [\n    {\n      "code": "maker",\n      "text": "maker’s instruction and local rules come first"\n    },\n    {\n      "code": "not-a-promise",\n      "text": "a reading is no promise"\n    },\n    {\n      "code": "pad",\n      "text": "pad flat and moving, off edges, lines, handles"\n    },\n    {\n      "code": "colour-on-pad",\n      "text": "colour on the pad under clear: stop"\n    },\n    {\n      "code": "protection",\n      "text": "protect eyes, ears, lungs, skin; RCD, dry cables"\n    },\n    {\n      "code": "vibration",\n      "text": "vibration up to 0 points a hand in a day (action 100, limit 400)",\n      "value": 0\n    },\n    {\n      "code": "chemicals",\n      "text": "solvents, iron remover: gloves, air, no acid; no fluoride"\n    },\n    {\n      "code": "old-paint",\n      "text": "never sand old paint dry (lead, chromate)"\n    },\n    {\n      "code": "hot-parts",\n      "text": "brakes, exhaust cool first"\n    },\n    {\n      "code": "licensed",\n      "text": "clear failure, airbags, structure: licensed practice"\n    }\n  ]\n}\n',
    },
  ),
  'compare-vehicles-differ': example('compare before.csv after.csv', {
    'after.csv':
      'vehicle,panel,point,reading_um\nFH-2,roof,1,116\nFH-2,roof,2,119\nFH-2,roof,3,114\n',
    'before.csv':
      'vehicle,panel,point,reading_um\nFH-1,roof,1,118\nFH-1,roof,2,121\nFH-1,roof,3,116\n',
  }),
  'compare-visit-again': example(
    'compare before.csv after.csv --marked --template saloon --film-record record.json --record record.json --date 2026-04-02',
    {
      'after.csv':
        'panel,point,reading_um\nroof,1,116\nroof,2,118\nroof,3,114\nbonnet,1,117\nbonnet,2,116\nbonnet,3,120\n',
      'before.csv':
        'panel,point,reading_um\nroof,1,118\nroof,2,121\nroof,3,116\nbonnet,1,119\nbonnet,2,117\nbonnet,3,122\n',
      'record.json':
        '{\n  "schema": "leastcut/film-record/1",\n  "visits": [\n    {\n      "date": "2026-03-31",\n      "panels": [\n        {\n          "panel": "roof",\n          "taken_um": 2.333333,\n          "taken_sd_um": 0.7,\n          "points": [\n            { "point": "1", "before_um": 118, "after_um": 116 },\n            { "point": "2", "before_um": 121, "after_um": 118 },\n            { "point": "3", "before_um": 116, "after_um": 114 }\n          ]\n        },\n        {\n          "panel": "bonnet",\n          "taken_um": 1.666667,\n          "taken_sd_um": 0.7,\n          "points": [\n            { "point": "1", "before_um": 119, "after_um": 117 },\n            { "point": "2", "before_um": 117, "after_um": 116 },\n            { "point": "3", "before_um": 122, "after_um": 120 }\n          ]\n        }\n      ]\n    }\n  ]\n}\n',
    },
  ),
  'compare-visit-earlier': example(
    'compare before.csv after.csv --marked --template saloon --film-record record.json --record record.json --date 2025-03-31',
    {
      'after.csv': 'panel,point,reading_um\nroof,1,116\nroof,2,118\nroof,3,114\n',
      'before.csv': 'panel,point,reading_um\nroof,1,118\nroof,2,121\nroof,3,116\n',
      'record.json':
        '{\n  "schema": "leastcut/film-record/1",\n  "visits": [\n    {\n      "date": "2026-02-03",\n      "panels": [{ "panel": "roof", "taken_um": 1, "taken_sd_um": 0.3 }]\n    }\n  ]\n}\n',
    },
  ),
  'compare-visit-in-parts': example(
    'compare before.csv before-too.csv after.csv --marked --template saloon',
    {
      'after.csv':
        'panel,point,reading_um\nroof,1,116\nroof,2,118\nroof,3,114\nbonnet,1,115\nbonnet,2,119\nbonnet,3,113\n',
      'before-too.csv': 'panel,point,reading_um\nbonnet,1,117\nbonnet,2,121\nbonnet,3,115\n',
      'before.csv': 'panel,point,reading_um\nroof,1,118\nroof,2,121\nroof,3,116\n',
    },
  ),
  'compare-visit-twice': example(
    'compare before.csv after.csv --marked --template saloon --film-record record.json --record record.json --date 2026-04-02',
    {
      'after.csv':
        'panel,point,reading_um\nroof,1,114\nroof,2,117\nroof,3,113\nbonnet,1,115\nbonnet,2,115\nbonnet,3,118\n',
      'before.csv':
        'panel,point,reading_um\nroof,1,118\nroof,2,121\nroof,3,116\nbonnet,1,119\nbonnet,2,117\nbonnet,3,122\n',
      'record.json':
        '{\n  "schema": "leastcut/film-record/1",\n  "visits": [\n    {\n      "date": "2026-03-31",\n      "panels": [\n        {\n          "panel": "roof",\n          "taken_um": 2.333333,\n          "taken_sd_um": 0.7,\n          "points": [\n            { "point": "1", "before_um": 118, "after_um": 116 },\n            { "point": "2", "before_um": 121, "after_um": 118 },\n            { "point": "3", "before_um": 116, "after_um": 114 }\n          ]\n        },\n        {\n          "panel": "bonnet",\n          "taken_um": 1.666667,\n          "taken_sd_um": 0.7,\n          "points": [\n            { "point": "1", "before_um": 119, "after_um": 117 },\n            { "point": "2", "before_um": 117, "after_um": 116 },\n            { "point": "3", "before_um": 122, "after_um": 120 }\n          ]\n        }\n      ]\n    }\n  ]\n}\n',
    },
  ),
  'compare-visit-within': example(
    'compare before.csv after.csv --marked --template saloon --film-record record.json',
    {
      'after.csv':
        'panel,point,reading_um\nroof,1,114\nroof,2,117\nroof,3,113\nbonnet,1,115\nbonnet,2,115\nbonnet,3,118\n',
      'before.csv':
        'panel,point,reading_um\nroof,1,118\nroof,2,121\nroof,3,116\nbonnet,1,119\nbonnet,2,117\nbonnet,3,122\n',
      'record.json':
        '{\n  "schema": "leastcut/film-record/1",\n  "visits": [\n    {\n      "date": "2026-03-31",\n      "panels": [\n        {\n          "panel": "roof",\n          "taken_um": 2.333333,\n          "taken_sd_um": 0.7,\n          "points": [\n            { "point": "1", "before_um": 118, "after_um": 116 },\n            { "point": "2", "before_um": 121, "after_um": 118 },\n            { "point": "3", "before_um": 116, "after_um": 114 }\n          ]\n        },\n        {\n          "panel": "bonnet",\n          "taken_um": 1.666667,\n          "taken_sd_um": 0.7,\n          "points": [\n            { "point": "1", "before_um": 119, "after_um": 117 },\n            { "point": "2", "before_um": 117, "after_um": 116 },\n            { "point": "3", "before_um": 122, "after_um": 120 }\n          ]\n        }\n      ]\n    }\n  ]\n}\n',
    },
  ),
  'compare-worked-unread': example(
    'compare before.csv after.csv --marked --template saloon --plan plan.json --record record.json --date 2026-03-31',
    {
      'after.csv': 'panel,point,reading_um\nroof,1,116\nroof,2,118\nroof,3,114\n',
      'before.csv':
        'panel,point,reading_um\nroof,1,118\nroof,2,121\nroof,3,116\nbonnet,1,119\nbonnet,2,117\nbonnet,3,118\n',
      'plan.json':
        '{\n  "schema": "leastcut/plan/1",\n  "vehicle": null,\n  "panels": [\n    {\n      "panel": "bonnet",\n      "verdict": "polish",\n      "steps": [\n        {\n          "machine": "da",\n          "pad": "foam-medium",\n          "product": "medium",\n          "sets": 2,\n          "removal_um": 2\n        }\n      ],\n      "removal_um": { "median": 2, "high": 5 },\n      "zones": []\n    }\n  ]\n}\n',
    },
  ),
  'date-in-future': example(
    'compare before.csv after.csv --marked --template saloon --record record.json --date 2926-03-31',
    {
      'after.csv': 'panel,point,reading_um\nroof,1,116\nroof,2,118\nroof,3,114\n',
      'before.csv': 'panel,point,reading_um\nroof,1,118\nroof,2,121\nroof,3,116\n',
    },
  ),
  'days-several': example('read input.csv', {
    'input.csv':
      'Date: 2024-01-01\nPanel,um\nBonnet,101\nRoof,99\nDate: 2024-01-02\nPanel,um\nBoot lid,97\nLF door,95\n',
  }),
  'decisions-mismatch': example('read readings.csv --as-decided decisions.json', {
    'decisions.json': '{ "schema": "leastcut/decisions/1", "delimiter": "," }\n',
    'readings.csv': 'panel;point;reading_um\nbonnet;1;101\nroof;1;99\n',
  }),
  'defect-graded-twice': example('plan samples/sound-saloon/readings.csv --defects defects.csv', {
    'defects.csv': 'panel,defect,grade\nbonnet,swirl-marks,3\nbonnet,swirl-marks,1\n',
  }),
  'defect-unknown': example('plan samples/sound-saloon/readings.csv --defects defects.csv', {
    'defects.csv': 'panel,defect,grade\nbonnet,swirl-mark,2\nroof,boredom,2\n',
  }),
  'delimiter-ambiguous': example('survey input.csv', {
    'input.csv': 'panel,a;panel;reading_um;b,reading_um\n',
  }),
  'encoding-unknown': example('survey input.csv', {
    'input.csv': 'panel,point,reading_um\nroof,1,101\nFooè,1,120\n',
  }),
  'environment-invalid': example('survey samples/sound-saloon/readings.csv'),
  'environment-unknown': example('template list'),
  'file-empty': example('survey input.csv', { 'input.csv': ' \n\n' }),
  'file-missing': example('survey nowhere.csv'),
  'file-other-kind': example('survey job.json', {
    'job.json': '{\n  "schema": "leastcut/job/1",\n  "aim": "correct"\n}\n',
  }),
  'file-twice': example('read input.csv copy.csv', {
    'copy.csv': 'panel,point,reading_um\nbonnet,1,112.0\nroof,1,121.5\n',
    'input.csv': 'panel,point,reading_um\nbonnet,1,112.0\nroof,1,121.5\n',
  }),
  'file-unreadable': example('survey a-folder'),
  'files-one-vehicle': example('read monday.csv tuesday.csv', {
    'monday.csv': 'panel,point,reading_um\nbonnet,1,101\nroof,1,99\n',
    'tuesday.csv': 'panel,point,reading_um\nbonnet,1,103\nroof,1,98\n',
  }),
  'files-two-vehicles': example('read monday.csv tuesday.csv', {
    'monday.csv': 'panel,point,reading_um\nbonnet,1,101\nroof,1,99\n',
    'tuesday.csv': 'panel,point,reading_um\nbonnet,1,143\nroof,1,138\n',
  }),
  'film-record-contradicts': example(
    'survey samples/sound-saloon/readings.csv --job job.json --film-record other.json',
    {
      'job.json': '{\n  "schema": "leastcut/job/1",\n  "film_record": "visits.json"\n}\n',
      'other.json':
        '{\n  "schema": "leastcut/film-record/1",\n  "vehicle": "FH-1042",\n  "visits": [\n    {\n      "date": "2025-03-02",\n      "panels": [\n        {\n          "panel": "bonnet",\n          "taken_um": 2,\n          "taken_sd_um": 0.4\n        }\n      ]\n    },\n    {\n      "date": "2026-04-20",\n      "panels": [\n        {\n          "panel": "roof",\n          "taken_um": 1.1,\n          "taken_sd_um": 0.4\n        }\n      ]\n    }\n  ]\n}\n',
      'visits.json':
        '{\n  "schema": "leastcut/film-record/1",\n  "vehicle": "FH-1042",\n  "visits": [\n    {\n      "date": "2025-03-02",\n      "panels": [\n        {\n          "panel": "bonnet",\n          "taken_um": 2,\n          "taken_sd_um": 0.4\n        }\n      ]\n    },\n    {\n      "date": "2026-02-11",\n      "panels": [\n        {\n          "panel": "bonnet",\n          "taken_um": 1.4,\n          "taken_sd_um": 0.4\n        }\n      ]\n    }\n  ]\n}\n',
    },
  ),
  'film-record-differs': example('survey readings.csv --film-record visits.json', {
    'readings.csv':
      'panel,point,reading_um\nbonnet,1,112.4\nbonnet,2,114.1\nbonnet,3,113.2\nroof,1,121.3\nroof,2,119.8\n',
    'visits.json':
      '{\n  "schema": "leastcut/film-record/1",\n  "vehicle": "FH-7",\n  "visits": [\n    {\n      "date": "2026-03-02",\n      "panels": [\n        {\n          "panel": "bonnet",\n          "taken_um": 2,\n          "taken_sd_um": 0.5,\n          "points": [\n            { "point": "1", "before_um": 161, "after_um": 159 },\n            { "point": "2", "before_um": 163, "after_um": 161 },\n            { "point": "3", "before_um": 160, "after_um": 158 }\n          ]\n        }\n      ]\n    }\n  ]\n}\n',
  }),
  'film-record-mismatch': example('survey samples/sound-saloon/readings.csv --job job.json', {
    'job.json':
      '{\n  "schema": "leastcut/job/1",\n  "vehicle": { "id": "FH-1042" },\n  "film_record": "visits.json"\n}\n',
    'visits.json':
      '{\n  "schema": "leastcut/film-record/1",\n  "vehicle": "FH-7",\n  "visits": []\n}\n',
  }),
  'film-record-older': example(
    'survey samples/sound-saloon/readings.csv --job job.json --film-record first-visit.json',
    {
      'first-visit.json':
        '{\n  "schema": "leastcut/film-record/1",\n  "vehicle": "FH-1042",\n  "visits": [\n    {\n      "date": "2025-03-02",\n      "panels": [\n        {\n          "panel": "bonnet",\n          "taken_um": 2,\n          "taken_sd_um": 0.4\n        }\n      ]\n    }\n  ]\n}\n',
      'job.json': '{\n  "schema": "leastcut/job/1",\n  "film_record": "visits.json"\n}\n',
      'visits.json':
        '{\n  "schema": "leastcut/film-record/1",\n  "vehicle": "FH-1042",\n  "visits": [\n    {\n      "date": "2025-03-02",\n      "panels": [\n        {\n          "panel": "bonnet",\n          "taken_um": 2,\n          "taken_sd_um": 0.4\n        }\n      ]\n    },\n    {\n      "date": "2026-02-11",\n      "panels": [\n        {\n          "panel": "bonnet",\n          "taken_um": 1.4,\n          "taken_sd_um": 0.4\n        }\n      ]\n    }\n  ]\n}\n',
    },
  ),
  'gauge-drifted': example('survey readings.csv --gauge gauge.json', {
    'gauge.json':
      '{\n  "schema": "leastcut/gauge/1",\n  "permitted_error": { "fixed_um": 1, "proportional_pct": 2 },\n  "verdict": "pass",\n  "checks": [\n    { "check": "before", "shim_um": 100, "shim_uncertainty_um": 0.5, "mean_um": 100.1, "n": 5, "error_um": 0.1, "expanded_um": 0.6, "verdict": "pass" },\n    { "check": "after", "shim_um": 100, "shim_uncertainty_um": 0.5, "mean_um": 101.6, "n": 5, "error_um": 1.6, "expanded_um": 0.6, "verdict": "pass" }\n  ],\n  "drift": [{ "shim_um": 100, "change_um": 1.5, "expanded_um": 0.5, "proved": true }]\n}\n',
    'readings.csv':
      'panel,point,reading_um\nbonnet,1,112.4\nbonnet,2,114.1\nroof,1,121.3\nroof,2,119.8\n',
  }),
  'gauge-failed': example('survey readings.csv --gauge gauge.json', {
    'gauge.json':
      '{\n  "schema": "leastcut/gauge/1",\n  "permitted_error": { "fixed_um": 1, "proportional_pct": 1 },\n  "verdict": "fail",\n  "checks": [\n    { "shim_um": 100, "shim_uncertainty_um": 0.5, "mean_um": 107.2, "n": 5, "error_um": 7.2, "expanded_um": 0.8, "verdict": "fail" }\n  ]\n}\n',
    'readings.csv':
      'panel,point,reading_um\nbonnet,1,112.4\nbonnet,2,114.1\nroof,1,121.3\nroof,2,119.8\n',
  }),
  'gauge-not-adjusted': example('gauge checks.csv --mpe-um 2 --mpe-pct 2 --adjust', {
    'checks.csv':
      'shim_um,shim_uncertainty_um,reading_um,check\n100,0.5,100.1,before\n100,0.5,100.2,before\n100,0.5,100.1,before\n100,0.5,101.9,after\n100,0.5,102.0,after\n100,0.5,101.9,after\n',
  }),
  'gauge-stuck': example('survey input.csv', {
    'input.csv':
      'panel,point,reading_um\nbonnet,1,112\nbonnet,2,112\nbonnet,3,112\nroof,1,112\nroof,2,112\nroof,3,112\nboot,1,112\nboot,2,112\nboot,3,112\n',
  }),
  'gauge-undecided': example('survey readings.csv --gauge gauge.json -v', {
    'gauge.json':
      '{\n  "schema": "leastcut/gauge/1",\n  "permitted_error": { "fixed_um": 1, "proportional_pct": 1 },\n  "verdict": "undecided",\n  "checks": [\n    { "shim_um": 100, "shim_uncertainty_um": 2, "mean_um": 101.4, "n": 5, "error_um": 1.4, "expanded_um": 2.1, "verdict": "undecided" }\n  ]\n}\n',
    'readings.csv':
      'panel,point,reading_um\nbonnet,1,112.4\nbonnet,2,114.1\nroof,1,121.3\nroof,2,119.8\n',
  }),
  'grade-attempts': example('grade reference.csv anna.csv anna.txt', {
    'anna.csv': 'panel,point,reading_um\nbonnet,1,113\nbonnet,2,111\nroof,1,119\nroof,2,120\n',
    'anna.txt': 'panel,point,reading_um\nbonnet,1,112\nbonnet,2,114\nroof,1,118\nroof,2,122\n',
    'reference.csv':
      'panel,point,reading_um\nbonnet,1,112\nbonnet,2,115\nbonnet,3,109\nroof,1,118\nroof,2,121\nroof,3,117\n',
  }),
  'grade-nameless': example('grade reference.csv class.csv', {
    'class.csv':
      'panel,point,reading_um,operator\nbonnet,1,112,Anna\nbonnet,2,113,\nroof,1,118,Ben\n',
    'reference.csv':
      'panel,point,reading_um\nbonnet,1,112\nbonnet,2,115\nbonnet,3,109\nroof,1,118\nroof,2,121\nroof,3,117\n',
  }),
  'grade-no-consensus': example('grade anna.csv ben.csv --consensus', {
    'anna.csv': 'panel,point,reading_um\nbonnet,1,112\nbonnet,2,113\n',
    'ben.csv': 'panel,point,reading_um\nroof,1,118\nroof,2,117\n',
  }),
  'grade-not-read': example('grade reference.csv anna.csv ben.csv', {
    'anna.csv': 'panel,point,reading_um\nbonnet,1,113\nbonnet,2,111\nroof,1,119\nroof,2,120\n',
    'ben.csv': 'panel,point,reading_um\nbonnet,1,1.134\nroof,1,119\n',
    'reference.csv':
      'panel,point,reading_um\nbonnet,1,112\nbonnet,2,115\nbonnet,3,109\nroof,1,118\nroof,2,121\nroof,3,117\n',
  }),
  'grade-other-vehicle': example('grade reference.csv anna.csv', {
    'anna.csv': 'vehicle,panel,point,reading_um\nFH-2,bonnet,1,112\nFH-2,roof,1,118\n',
    'reference.csv':
      'vehicle,panel,point,reading_um\nFH-1,bonnet,1,112\nFH-1,bonnet,2,113\nFH-1,roof,1,118\n',
  }),
  'grade-reference-again': example('grade reference.csv anna.csv students.csv', {
    'anna.csv': 'panel,point,reading_um\nbonnet,1,113\nbonnet,2,111\nroof,1,119\nroof,2,120\n',
    'reference.csv':
      'panel,point,reading_um\nbonnet,1,112\nbonnet,2,115\nbonnet,3,109\nroof,1,118\nroof,2,121\nroof,3,117\n',
    'students.csv':
      'panel,point,reading_um\nbonnet,1,112\nbonnet,2,115\nbonnet,3,109\nroof,1,118\nroof,2,121\nroof,3,117\n',
  }),
  'grade-reference-doubted': example('grade reference.csv anna.csv', {
    'anna.csv': 'panel,point,reading_um\nbonnet,1,113\nbonnet,2,111\nroof,1,119\nroof,2,120\n',
    'reference.csv':
      'panel,point,repeat,reading_um\nbonnet,1,1,112.3\nbonnet,1,2,112.3\nbonnet,2,1,115.1\nbonnet,2,2,115.1\nbonnet,3,1,109.4\nbonnet,3,2,109.4\nroof,1,1,118.2\nroof,1,2,118.2\nroof,2,1,121.9\nroof,2,2,121.9\nroof,3,1,117.6\nroof,3,2,117.6\n',
  }),
  'header-missing': example('survey input.csv', { 'input.csv': 'apron,1,120\nroof,1,118\n' }),
  'header-repeated': example('read input.csv -v', {
    'input.csv':
      'panel,point,reading_um\nbonnet,1,104\nbonnet,2,106\npanel,point,reading_um\nroof,1,101\nroof,2,99\n',
  }),
  'init-exists': example('init {tmp}'),
  'job-mismatch': example('survey input.csv --job job.json', {
    'input.csv':
      'vehicle,panel,point,reading_um\nFH-2,bonnet,1,112\nFH-2,bonnet,2,110\nFH-2,bonnet,3,111\n',
    'job.json': '{ "schema": "leastcut/job/1", "vehicle": { "id": "FH-1" } }\n',
  }),
  'json-duplicate-key': example('plan samples/sound-saloon/readings.csv --job job.json', {
    'job.json': '{\n  "schema": "leastcut/job/1",\n  "aim": "correct",\n  "aim": "full"\n}\n',
  }),
  'json-syntax': example('plan samples/sound-saloon/readings.csv --job job.json', {
    'job.json': '{\n  "schema": "leastcut/job/1",\n  "aim": "correct",\n}\n',
  }),
  'keying-slip': example('survey input.csv -v', {
    'input.csv':
      'panel,point,reading_um\nbonnet,1,112\nbonnet,2,115\nbonnet,3,1120\nbonnet,4,113\nroof,1,110\nroof,2,113\nroof,3,108\n',
  }),
  'line-left-out': example('read input.csv', {
    'input.csv': 'panel,point,reading_um\nbonnet,1,104\nroof,1,101\n\nEnd of report\n',
  }),
  'no-readings': example('survey input.csv', {
    'input.csv': 'panel,point,reading_um\nbonnet,1,\nroof,1,-\n',
  }),
  'operators-differ': example('survey input.csv', {
    'input.csv':
      'panel,point,operator,reading_um\nbonnet,1,Ann,112\nbonnet,2,Ann,115\nbonnet,3,Ann,113\nroof,1,Ann,108\nroof,2,Ann,107\nroof,3,Ann,110\nboot,1,Ann,111\nboot,2,Ann,114\nboot,3,Ann,112\nbonnet,1,Ben,117\nbonnet,2,Ben,121\nbonnet,3,Ben,118\nroof,1,Ben,114\nroof,2,Ben,111\nroof,3,Ben,116\nboot,1,Ben,116\nboot,2,Ben,120\nboot,3,Ben,117\n',
  }),
  'output-ending': example('survey samples/sound-saloon/readings.csv -o survey.html'),
  'output-exists': example('survey samples/sound-saloon/readings.csv -o report.txt'),
  'output-is-input': example('survey readings.csv --out readings.csv --force'),
  'output-unwritable': example(
    'survey samples/sound-saloon/readings.csv -o no-such-folder/report.txt',
  ),
  'panel-ambiguous': example('survey input.csv', {
    'input.csv':
      'panel,point,reading_um\nbonnet,1,120\nbonnet,2,121\nroof,1,118\nboot lid,1,119\nleft quarter,1,117\nwing,1,118\n',
  }),
  'panel-missing': example('survey input.csv', {
    'input.csv': 'panel,point,reading_um\nbonnet,1,120\nbonnet,2,121\n,3,119\n',
  }),
  'panel-names-together': example('read input.csv', {
    'input.csv':
      'panel,point,reading_um\nroof,1,99\nboot,1,101\nboot,2,103\ntailgate,1,120\ntailgate,2,122\n',
  }),
  'panel-unknown': example('survey input.csv', {
    'input.csv':
      'panel,point,reading_um\nbonnet,1,120\nbonnet,2,121\nroof,1,118\nboot lid,1,119\nleft quarter,1,117\nparcel shelf,1,118\n',
  }),
  'panel-unmatched': example('read input.csv', {
    'input.csv': 'panel,point,reading_um\ntank,1,120\nseat,1,118\n',
  }),
  'percent-small': example(
    'quote samples/sound-saloon/readings.csv --job samples/sound-saloon/job.json --defects samples/sound-saloon/defects.csv --shop shop.json --aim correct',
    {
      'shop.json':
        '{ "schema": "leastcut/shop/1", "prices": { "currency": "EUR", "labour_minor_per_h": 4500,\n  "tax": { "name": "VAT", "rate_pct": 0.19, "level": "total", "rounding": "half-up", "included": false } } }\n',
    },
  ),
  'plan-mismatch': example('compare before.csv after.csv --marked --plan plan.json', {
    'after.csv':
      'vehicle,panel,point,reading_um\nFH-1,roof,1,116\nFH-1,roof,2,119\nFH-1,roof,3,114\n',
    'before.csv':
      'vehicle,panel,point,reading_um\nFH-1,roof,1,118\nFH-1,roof,2,121\nFH-1,roof,3,116\n',
    'plan.json': '{ "schema": "leastcut/plan/1", "vehicle": "FH-2", "panels": [] }\n',
  }),
  'points-alike': example('read input.csv', {
    'input.csv': 'panel,point,reading_um\nbonnet,1,104\nbonnet,01,106\n',
  }),
  'price-coin-large': example(
    'quote samples/sound-saloon/readings.csv --job samples/sound-saloon/job.json --defects samples/sound-saloon/defects.csv --shop shop.json --aim correct',
    {
      'shop.json':
        '{ "schema": "leastcut/shop/1", "prices": { "currency": "GBP", "labour_minor_per_h": 4500, "cash_rounding_minor": 1000000 } }\n',
    },
  ),
  'price-material': example(
    'quote samples/sound-saloon/readings.csv --job samples/sound-saloon/job.json --shop shop.json --aim correct',
    {
      'shop.json':
        '{ "schema": "leastcut/shop/1", "prices": { "currency": "GBP", "labour_minor_per_h": 4500,\n  "materials": [{ "id": "mediun", "pack": 1000, "unit": "ml", "price_minor": 3750 }] } }\n',
    },
  ),
  'price-pack-small': example(
    'quote samples/sound-saloon/readings.csv --job samples/sound-saloon/job.json --defects samples/sound-saloon/defects.csv --shop shop.json --aim correct',
    {
      'shop.json':
        '{ "schema": "leastcut/shop/1", "prices": { "currency": "GBP", "labour_minor_per_h": 4500,\n  "materials": [{ "id": "medium", "pack": 1, "unit": "ml", "price_minor": 3750 }] } }\n',
    },
  ),
  'price-small': example(
    'quote samples/sound-saloon/readings.csv --job samples/sound-saloon/job.json --defects samples/sound-saloon/defects.csv --shop shop.json --aim correct',
    {
      'shop.json':
        '{ "schema": "leastcut/shop/1", "prices": { "currency": "GBP", "labour_minor_per_h": 45 } }\n',
    },
  ),
  'price-too-large': example(
    'quote samples/sound-saloon/readings.csv --job samples/sound-saloon/job.json --defects samples/sound-saloon/defects.csv --shop shop.json',
    {
      'shop.json':
        '{\n  "schema": "leastcut/shop/1",\n  "prices": {\n    "currency": "GBP",\n    "labour_minor_per_h": 4500,\n    "materials": [\n      { "id": "medium", "pack": 1, "unit": "ml", "price_minor": 1000000000000 },\n      { "id": "fine", "pack": 1, "unit": "ml", "price_minor": 1000000000000 },\n      { "id": "iron-remover", "pack": 1, "unit": "ml", "price_minor": 1000000000000 }\n    ],\n    "markup_pct": 1000\n  }\n}\n',
    },
  ),
  'quote-before-read': example('quote input.csv --aim correct --date 2026-11-27', {
    'input.csv':
      'panel,point,reading_um,time\nroof,1,116,2026-12-05\nroof,2,118,2026-12-05\nroof,3,114,2026-12-05\n',
  }),
  'quote-unclosed': example('survey input.csv', {
    'input.csv': 'panel,point,reading_um\nbonnet,1,120\n"roof,1,118\nboot lid,1,119\n',
  }),
  'rates-not-owned': example(
    'methods show da/foam-soft/fine --rates rates.json --shop shop.json -v',
    {
      'rates.json':
        '{\n  "schema": "leastcut/rates/1",\n  "observations": [\n    { "date": "2026-01-15", "vehicle": "FH-1009", "panel": "bonnet", "combination": "rotary/wool/heavy", "sets": 4, "removed_um": 1.1, "standard_error_um": 0.4 }\n  ]\n}\n',
      'shop.json': '{ "schema": "leastcut/shop/1", "machines": ["da"] }\n',
    },
  ),
  'rates-twice': example('methods show da/foam-soft/fine --rates rates.json', {
    'rates.json':
      '{\n  "schema": "leastcut/rates/1",\n  "observations": [\n    { "date": "2026-01-15", "vehicle": "FH-1009", "panel": "bonnet", "combination": "da/foam-soft/fine", "sets": 4, "removed_um": 1.1, "standard_error_um": 0.4 },\n    { "date": "2026-01-15", "vehicle": "FH-1009", "panel": "bonnet", "combination": "da/foam-soft/fine", "sets": 4, "removed_um": 1.1, "standard_error_um": 0.4 }\n  ]\n}\n',
  }),
  'rates-unknown': example('methods show da/foam-soft/fine --rates rates.json', {
    'rates.json':
      '{\n  "schema": "leastcut/rates/1",\n  "observations": [\n    { "date": "2026-01-15", "vehicle": "FH-1009", "panel": "bonnet", "combination": "da/foam-sfot/fine", "sets": 4, "removed_um": 1.1, "standard_error_um": 0.4 }\n  ]\n}\n',
  }),
  'rates-unlikely': example('methods show da/foam-soft/fine --rates rates.json', {
    'rates.json':
      '{\n  "schema": "leastcut/rates/1",\n  "observations": [\n    { "date": "2026-01-15", "vehicle": "FH-1009", "panel": "bonnet", "combination": "da/foam-soft/fine", "sets": 4, "removed_um": 28, "standard_error_um": 0.4 }\n  ]\n}\n',
  }),
  'reading-ambiguous': example('survey input.csv', {
    'input.csv': 'panel;point;reading_um\nbonnet;1;1.234\nroof;1;118\n',
  }),
  'reading-became-date': example('read input.csv', {
    'input.csv': 'panel,point,reading_mil\nbonnet,1,4.7\nbonnet,2,05-Apr\nroof,1,04-Jun\n',
  }),
  'reading-deleted': example('read input.csv', {
    'input.csv': 'panel,point,reading_um\nbonnet,1,120\nbonnet,2,180 (deleted)\nroof,1,118\n',
  }),
  'reading-doubted': example('read input.csv', {
    'input.csv':
      'panel,point,reading_um,note\nbonnet,1,104,\nbonnet,2,188,"wrong place, ignore"\nroof,1,101,\n',
  }),
  'reading-error': example('read input.csv', {
    'input.csv': 'panel,point,reading_um\nbonnet,1,120\nbonnet,2,E-04\nroof,1,#REF!\nroof,2,118\n',
  }),
  'reading-implausible': example('survey input.csv', {
    'input.csv': 'panel,point,reading_um\nbonnet,1,12050\nroof,1,118\n',
  }),
  'reading-missing': example('survey input.csv -v', {
    'input.csv':
      'panel,point,reading_um\nbonnet,1,120\nbonnet,2,121\nroof,1,118\nboot lid,1,119\nleft quarter,1,117\nroof,2,\n',
  }),
  'reading-not-a-number': example('survey input.csv', {
    'input.csv': 'panel,point,reading_um\nbonnet,1,12O\nroof,1,118\n',
  }),
  'reading-over-range': example('read input.csv', {
    'input.csv': 'panel,point,reading_um\nbonnet,1,120\nbonnet,2,OL\nroof,1,118\n',
  }),
  'readings-altered': example('read input.csv', {
    'input.csv': 'Scale factor,0.1\npanel,point,reading_um\nbonnet,1,1040\nroof,1,1010\n',
  }),
  'row-above-header': example('read input.csv', {
    'input.csv': 'bonnet;1;104\npanel,point,reading_um\nbonnet,1,104\nroof,1,101\n',
  }),
  'row-too-long': example('survey input.csv', {
    'input.csv': 'panel,point,reading_um\nbonnet,1,120,5\nroof,1,118\n',
  }),
  'row-too-short': example('survey input.csv', {
    'input.csv': 'panel,point,reading_um\nbonnet,1\nroof,1,118\n',
  }),
  'settings-invalid': example('plan samples/sound-saloon/readings.csv --job job.json', {
    'job.json': '{\n  "schema": "leastcut/job/1",\n  "risk_pct": "five"\n}\n',
  }),
  'settings-panel-ambiguous': example('survey samples/sound-saloon/readings.csv --job job.json', {
    'job.json':
      '{\n  "schema": "leastcut/job/1",\n  "template": "saloon",\n  "panels": {\n    "front door": { "taken_um": 4 }\n  }\n}\n',
  }),
  'settings-panel-twice': example('survey samples/sound-saloon/readings.csv --job job.json', {
    'job.json':
      '{\n  "schema": "leastcut/job/1",\n  "template": "saloon",\n  "panels": {\n    "hood": { "taken_um": 4 },\n    "bonnet": { "taken_um": 2 }\n  }\n}\n',
  }),
  'settings-panel-unknown': example('survey samples/sound-saloon/readings.csv --job job.json', {
    'job.json':
      '{\n  "schema": "leastcut/job/1",\n  "template": "saloon",\n  "panels": {\n    "bonet": { "finish": "matte" },\n    "chimney": { "taken_um": 2 }\n  }\n}\n',
  }),
  'settings-schema': example('plan samples/sound-saloon/readings.csv --job job.json', {
    'job.json': '{\n  "aim": "correct"\n}\n',
  }),
  'settings-unknown-key': example('plan samples/sound-saloon/readings.csv --shop shop.json', {
    'shop.json': '{\n  "schema": "leastcut/shop/1",\n  "machine": ["da"]\n}\n',
  }),
  'sheet-nothing-more': example('template sheet --for survey.json --panel bonnet', {
    'survey.json':
      '{\n  "schema": "leastcut/survey/1",\n  "vehicle": null,\n  "template": "saloon",\n  "panels": [\n    { "panel": "bonnet", "n_points": 9, "condition": "original", "advice": [], "zones": [] },\n    { "panel": "roof", "n_points": 0, "condition": "unread", "advice": [], "zones": [] }\n  ]\n}\n',
  }),
  'spot-disagrees': example('spot spots.csv', {
    'spots.csv':
      'spot,panel,machine,pad,product,sets,mark,before_um,after_um,cleared_pct\nA,bonnet,da,foam-medium,medium,1,1,112,111,40\nA,bonnet,da,foam-medium,heavy,1,2,113,112,40\n',
  }),
  'spot-doubted': example('spot spots.csv', {
    'spots.csv':
      'spot,panel,machine,pad,product,sets,mark,before_mil,after_mil,cleared_pct\nA,bonnet,da,foam-medium,medium,2,1,116.3,114.6,85\nA,bonnet,da,foam-medium,medium,2,2,118.3,116.1,85\n',
  }),
  'spot-film-gained': example('spot spots.csv', {
    'spots.csv':
      'spot,panel,machine,pad,product,sets,mark,before_um,after_um,cleared_pct\nA,bonnet,da,foam-medium,medium,1,1,112,119,40\nA,bonnet,da,foam-medium,medium,1,2,113,112.5,40\nA,bonnet,da,foam-medium,medium,1,3,112,111,40\n',
  }),
  'spot-in-two-files': example('spot monday.csv tuesday.csv', {
    'monday.csv':
      'spot,panel,machine,pad,product,sets,mark,before_um,after_um,cleared_pct\n1,bonnet,da,foam-medium,medium,1,1,112,111,40\n',
    'tuesday.csv':
      'spot,panel,machine,pad,product,sets,mark,before_um,after_um,cleared_pct\n1,roof,da,foam-medium,medium,2,1,118,116,60\n',
  }),
  'spot-keying-slip': example('spot spots.csv', {
    'spots.csv':
      'spot,panel,machine,pad,product,sets,mark,before_um,after_um,cleared_pct\nA,bonnet,da,foam-medium,medium,1,1,119.4,118.7,40\nA,bonnet,da,foam-medium,medium,1,2,119.6,11.89,40\nA,bonnet,da,foam-medium,medium,1,3,120.0,119.2,40\n',
  }),
  'spot-mark-twice': example('spot spots.csv', {
    'spots.csv':
      'spot,panel,machine,pad,product,sets,mark,before_um,after_um,cleared_pct\nA,bonnet,da,foam-medium,medium,1,1,112,111,40\nA,bonnet,da,foam-medium,medium,1,1,113,112,40\n',
  }),
  'spot-method-unknown': example('spot spots.csv', {
    'spots.csv':
      'spot,panel,machine,pad,product,sets,mark,before_um,after_um,cleared_pct\nA,bonnet,da,foam-midium,medium,1,1,112,111,40\n',
  }),
  'spots-mismatch': example('plan readings.csv --spots spots.csv', {
    'readings.csv': 'vehicle,panel,reading_um\none,bonnet,112\ntwo,bonnet,113\n',
    'spots.csv':
      'spot,panel,machine,pad,product,sets,mark,before_um,after_um,cleared_pct\nA,bonnet,da,foam-medium,medium,1,1,112,111,40\n',
  }),
  'stage-order': example('plan input.csv --job job.json', {
    'input.csv':
      'vehicle,panel,point,reading_um\nFH-2,bonnet,1,112\nFH-2,bonnet,2,110\nFH-2,bonnet,3,111\n',
    'job.json':
      '{\n  "schema": "leastcut/job/1",\n  "template": "saloon",\n  "order": [\n    "record",\n    "wash",\n    "wax",\n    "dry",\n    "read",\n    "mask",\n    "cut",\n    "refine",\n    "finish",\n    "unmask-dust",\n    "panel-wipe",\n    "remeasure",\n    "final",\n    "hand-over"\n  ]\n}\n',
  }),
  'stated-clear-too-thick': example('survey readings.csv --job job.json', {
    'job.json':
      '{\n  "schema": "leastcut/job/1",\n  "template": "coupe",\n  "panels": { "bonnet": { "clear_um": 118 } }\n}\n',
    'readings.csv': 'panel,point,reading_um\nbonnet,1,112\nbonnet,2,115\nbonnet,3,114\n',
  }),
  'stated-layers-apart': example('survey readings.csv --job job.json', {
    'job.json':
      '{\n  "schema": "leastcut/job/1",\n  "template": "coupe",\n  "taken_um": 0,\n  "clear_um": 60,\n  "under_um": 100\n}\n',
    'readings.csv':
      'panel,point,reading_um\nbonnet,1,112\nbonnet,2,115\nbonnet,3,114\nroof,1,113\nroof,2,116\nroof,3,112\nboot lid,1,114\nboot lid,2,115\nboot lid,3,111\n',
  }),
  'statistics-disagree': example('read input.csv', {
    'input.csv': 'panel;point;reading_um\nbonnet;1;1041\nbonnet;2;1063\nbonnet;Mean;105,2\n',
  }),
  'statistics-left-out': example('read input.csv -v', {
    'input.csv':
      'panel,point,reading_um\nbonnet,1,120\nbonnet,2,122\nbonnet,Mean,121\nroof,1,118\n',
  }),
  'statistics-unnamed': example('read input.csv', {
    'input.csv':
      'panel,point,reading_um\nbonnet,1,101\nbonnet,2,103\nbonnet,,102\nroof,1,99\nroof,2,96\nroof,,97.5\nboot,1,104\nboot,2,107\nboot,,105.5\n',
  }),
  'substrate-contradicted': example('survey input.csv', {
    'input.csv':
      'panel,point,reading_um,substrate\nbonnet,1,118,Fe\nbonnet,2,121,NFe\nbonnet,3,119,Fe\nroof,1,119,Fe\nroof,2,120,Fe\nroof,3,117,Fe\n',
  }),
  'table-left-out': example('read input.csv', {
    'input.csv':
      'panel,point,reading_um\nbonnet,1,104\nroof,1,101\n\nFoil,Nominal,Shown\nA,50,51\nB,100,101\n',
  }),
  'table-repeated': example('read input.csv', {
    'input.csv':
      'panel,point,reading_um\nbonnet,1,104\nbonnet,2,106\nroof,1,101\nroof,2,99\npanel,point,reading_um\nbonnet,1,104\nbonnet,2,106\nroof,1,101\nroof,2,99\n',
  }),
  'tables-apart': example('read input.csv', {
    'input.csv':
      'Before polishing\npanel,point,reading_um\nbonnet,1,104\nroof,1,101\n\nAfter polishing\npanel,point,reading_um\nbonnet,1,101\nroof,1,99\n',
  }),
  'template-undecided': example('survey input.csv', {
    'input.csv': 'panel,point,reading_um\ntank,1,120\nseat,1,118\n',
  }),
  'template-unusual': example('template check barn.json', {
    'barn.json':
      '{\n  "schema": "leastcut/template/1",\n  "name": "saloon with a barn door",\n  "base": "saloon",\n  "change": {\n    "door-front-left": { "area_m2": 3 }\n  }\n}\n',
  }),
  'unit-conflict': example('survey input.csv --reading-unit mil', {
    'input.csv':
      'panel,point,reading_um\nbonnet,1,120\nbonnet,2,121\nroof,1,118\nboot lid,1,119\nleft quarter,1,117\n',
  }),
  'unit-doubtful': example('read input.csv', {
    'input.csv': 'panel,point,reading_um\nbonnet,1,4.3\nbonnet,2,4.5\nroof,1,4.2\n',
  }),
  'unit-missing': example('survey input.csv', {
    'input.csv': 'panel,point,reading\nbonnet,1,120\n',
  }),
  'unit-unknown': example('survey input.csv', {
    'input.csv': 'panel,point,reading (1/100 mm)\nbonnet,1,120000\n',
  }),
  'usage-missing-input': example('survey'),
  'usage-option-value': example('survey samples/sound-saloon/readings.csv --risk-pct 90'),
  'usage-several-vehicles': example('survey input.csv --format json', {
    'input.csv':
      'vehicle,panel,point,reading_um\nFH 1,bonnet,1,120\nFH 1,roof,1,118\nFH 2,bonnet,1,121\nFH 2,roof,1,119\n',
  }),
  'usage-unknown-command': example('surveys samples/sound-saloon/readings.csv'),
  'usage-unknown-field': example(
    'quote samples/sound-saloon/readings.csv --job samples/sound-saloon/job.json --defects samples/sound-saloon/defects.csv --shop samples/shop.json --format csv --fields aim,amont_minor',
  ),
  'usage-unknown-method': example('methods show da/foam-medum/medium'),
  'usage-unknown-option': example('survey samples/sound-saloon/readings.csv --panels bonnet'),
  'usage-unknown-panel': example('survey samples/sound-saloon/readings.csv --panel bonet'),
  'usage-unknown-template': example('survey samples/sound-saloon/readings.csv --template salon'),
  'usage-unknown-topic': example('explain holgrams'),
  'usage-unknown-trainee': example('grade reference.csv anna.csv --trainee ana', {
    'anna.csv': 'panel,point,reading_um\nbonnet,1,113\nroof,1,119\n',
    'reference.csv':
      'panel,point,reading_um\nbonnet,1,112\nbonnet,2,115\nbonnet,3,109\nroof,1,118\nroof,2,121\nroof,3,117\n',
  }),
  'usage-unknown-vehicle': example('survey input.csv --vehicle "FH 3"', {
    'input.csv':
      'vehicle,panel,point,reading_um\nFH 1,bonnet,1,120\nFH 1,roof,1,118\nFH 22,bonnet,1,121\nFH 22,roof,1,119\n',
  }),
  'visits-together': example('read input.csv', {
    'input.csv':
      'date,panel,point,reading_um\n2026-03-02,bonnet,1,122\n2026-03-02,roof,1,111\n2026-11-20,bonnet,1,112\n2026-11-20,roof,1,101\n',
  }),
  'worked-mismatch': example(
    'compare before.csv after.csv --marked --plan plan.json --worked worked.csv',
    {
      'after.csv':
        'vehicle,panel,point,reading_um\nFH-1,roof,1,116\nFH-1,roof,2,119\nFH-1,roof,3,114\n',
      'before.csv':
        'vehicle,panel,point,reading_um\nFH-1,roof,1,118\nFH-1,roof,2,121\nFH-1,roof,3,116\n',
      'plan.json':
        '{\n  "schema": "leastcut/plan/1",\n  "vehicle": "FH-1",\n  "panels": [\n    {\n      "panel": "roof",\n      "verdict": "polish",\n      "steps": [\n        { "machine": "da", "pad": "foam-medium", "product": "medium", "sets": 3, "removal_um": 2.2 },\n        { "machine": "da", "pad": "foam-soft", "product": "fine", "sets": 1, "removal_um": 0.4 }\n      ],\n      "removal_um": { "median": 2.6, "high": 5.2 },\n      "zones": []\n    }\n  ]\n}\n',
      'worked.csv': 'panel,step,sets\nroof,1,2\nroof,3,1\n',
    },
  ),
  'worked-unplanned': example(
    'compare before.csv after.csv --marked --plan plan.json --worked worked.csv -v',
    {
      'after.csv':
        'vehicle,panel,point,reading_um\nFH-1,roof,1,116\nFH-1,roof,2,119\nFH-1,roof,3,114\nFH-1,bonnet,1,119\nFH-1,bonnet,2,121\n',
      'before.csv':
        'vehicle,panel,point,reading_um\nFH-1,roof,1,118\nFH-1,roof,2,121\nFH-1,roof,3,116\nFH-1,bonnet,1,120\nFH-1,bonnet,2,122\n',
      'plan.json':
        '{\n  "schema": "leastcut/plan/1",\n  "vehicle": "FH-1",\n  "panels": [\n    {\n      "panel": "roof",\n      "verdict": "polish",\n      "steps": [\n        { "machine": "da", "pad": "foam-medium", "product": "medium", "sets": 3, "removal_um": 2.2 },\n        { "machine": "da", "pad": "foam-soft", "product": "fine", "sets": 1, "removal_um": 0.4 }\n      ],\n      "removal_um": { "median": 2.6, "high": 5.2 },\n      "zones": []\n    }\n  ]\n}\n',
      'worked.csv': 'panel,step,sets\nroof,1,2\nroof,2,1\nbonnet,1,1\n',
    },
  ),
};
