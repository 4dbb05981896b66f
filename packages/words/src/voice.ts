// Who speaks to whom: a language, and how the class reads its builds.

import type { Catalogue } from './catalogue.ts';
import type { Reader } from './reader.ts';

export interface Voice {
  readonly words: Catalogue;
  readonly reader: Reader;
}
