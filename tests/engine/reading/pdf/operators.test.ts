import { expect, test } from 'vitest';
import { operatorsOf } from '../../../../engine/reading/pdf/operators.ts';

// ISO 32000-1:2008, 7.3.4 (strings), 7.3.6 (arrays), 7.8.2 (content streams).
test.each([
  ['1 0 0 1 5 7 cm', [{ name: 'cm', numbers: [1, 0, 0, 1, 5, 7], called: undefined }]],
  ['2 (3 Tj) 4 "', [{ name: '"', numbers: [2, 4], called: undefined }]],
  [
    '(one \\) 2) Tj 9 w',
    [
      { name: 'Tj', numbers: [], called: undefined },
      { name: 'w', numbers: [9], called: undefined },
    ],
  ],
  ['2 <0041 42> 4 "', [{ name: '"', numbers: [2, 4], called: undefined }]],
  ['[3 (a) -20 <42>] 8 d', [{ name: 'd', numbers: [8], called: undefined }]],
  ['/Span <</MCID 3 /Lang (en)>> BDC', [{ name: 'BDC', numbers: [], called: 'Span' }]],
  ['/F1 12 Tf', [{ name: 'Tf', numbers: [12], called: 'F1' }]],
])(
  'of %s the operators are told with the numbers before them, text and arrays left out',
  (content, operators) => {
    expect([...operatorsOf(content)]).toEqual(operators);
  },
);
