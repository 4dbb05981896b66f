// What somebody chose to bring in: a file of a try, or a photo of its code. It is read whole or not at all.

import type { Attempt } from '@cairnmark/engine';
import type { CodeIssue, FileIssue, Prints } from '@cairnmark/formats';
import { decode, decodeCode } from '@cairnmark/formats';
import { readPhoto } from './read-photo.ts';

/** A try from elsewhere. */
export interface Offered {
  readonly attempt: Attempt;
  /** Of the class it comes from; null: files do not tell. */
  readonly prints: Prints | null;
}

export type Read =
  | { readonly kind: 'offered'; readonly offered: Offered }
  | { readonly kind: 'refused'; readonly issues: readonly (CodeIssue | FileIssue)[] }
  | { readonly kind: 'file-gone' | 'photo-not-opened' | 'no-code' };

export async function readOffered(file: File): Promise<Read> {
  if (isPhoto(file)) return ofPhoto(file);
  // Moved or changed since it was chosen.
  const text = await file.text().catch(() => null);
  if (text === null) return { kind: 'file-gone' };
  const read = decode(text, 'attempt');
  if (!read.ok) return { kind: 'refused', issues: read.issues };
  return { kind: 'offered', offered: { attempt: read.value.value, prints: null } };
}

async function ofPhoto(file: File): Promise<Read> {
  const photo = await readPhoto(file);
  if (photo.kind === 'not-opened') return { kind: 'photo-not-opened' };
  if (photo.kind === 'no-code') return photo;
  const read = decodeCode(photo.text);
  return read.ok ? { kind: 'offered', offered: read.value } : { kind: 'refused', issues: read.issues };
}

/** Some systems do not tell what a file is. */
const isPhoto = ({ type, name }: File): boolean =>
  type.startsWith('image/') || /\.(jpe?g|png|webp|heic|heif|gif|bmp|avif)$/i.test(name);
