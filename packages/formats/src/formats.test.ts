// The schemas and the hand-written types say the same: a key that only one of them has does not compile.

import type * as z from 'zod/mini';
import { describe, expect, it } from 'vitest';
import type { Records } from './formats.ts';
import { CODECS, FORMATS } from './formats.ts';
