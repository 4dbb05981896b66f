// The text of a code on a photo. The photo is looked at on this page, and neither kept nor sent.

import { decodeQR } from 'qr/decode.js';

export type PhotoRead =
  | { readonly kind: 'read'; readonly text: string }
  /** No picture that this browser opens. */
  | { readonly kind: 'not-opened' }
  | { readonly kind: 'no-code' };

export async function readPhoto(photo: Blob): Promise<PhotoRead> {
  // Some browsers refuse what they cannot open, some say nothing else of it.
  const whole = await createImageBitmap(photo).catch(() => null);
  if (whole === null) return { kind: 'not-opened' };
  try {
    for (const look of LOOKS) {
      const text = await lookAt(whole, look);
      if (text !== null) return { kind: 'read', text };
    }
    return { kind: 'no-code' };
  } finally {
    whole.close();
  }
}

interface Look {
  /** Points along the longer side at most: the squares of a code are found best at three to ten points each. */
  readonly longestPx: number;
  readonly turnDegrees: number;
}

/** The likeliest first. Turned, because squares on their corner are told apart worst. */
const LOOKS: readonly Look[] = [
  { longestPx: 1200, turnDegrees: 0 },
  { longestPx: 2000, turnDegrees: 0 },
  { longestPx: 800, turnDegrees: 0 },
  { longestPx: 3000, turnDegrees: 0 },
  { longestPx: 1600, turnDegrees: 30 },
  { longestPx: 1600, turnDegrees: 60 },
  { longestPx: 2400, turnDegrees: 45 },
  { longestPx: 1000, turnDegrees: 20 },
];

async function lookAt(whole: ImageBitmap, look: Look): Promise<string | null> {
  // The page is drawn between two looks.
  await new Promise((drawn) => setTimeout(drawn));
  try {
    const image = await pointsOf(whole, look);
    return image === null ? null : decodeQR(image, { effort: Number.POSITIVE_INFINITY, timeLimit: LOOK_MS });
  } catch {
    // Nothing is seen, or a large photo at this scale is more than the device has room for.
    return null;
  }
}

/** One look; a tablet that is slow gives up here and looks at another scale. */
const LOOK_MS = 1500;

async function pointsOf(whole: ImageBitmap, { longestPx, turnDegrees }: Look): Promise<ImageData | null> {
  const scale = Math.min(1, longestPx / Math.max(whole.width, whole.height));
  const [width, height] = [Math.max(1, Math.round(whole.width * scale)), Math.max(1, Math.round(whole.height * scale))];
  const scaled = await createImageBitmap(whole, {
    resizeWidth: width,
    resizeHeight: height,
    resizeQuality: 'high',
  });
  const turnRad = (turnDegrees * Math.PI) / 180;
  const [sine, cosine] = [Math.sin(turnRad), Math.cos(turnRad)];
  const canvas = document.createElement('canvas');
  canvas.width = Math.ceil(width * cosine + height * sine);
  canvas.height = Math.ceil(width * sine + height * cosine);
  const pen = canvas.getContext('2d', { willReadFrequently: true });
  if (pen === null) return null;
  pen.fillStyle = 'white';
  pen.fillRect(0, 0, canvas.width, canvas.height);
  pen.translate(canvas.width / 2, canvas.height / 2);
  pen.rotate(turnRad);
  pen.drawImage(scaled, -width / 2, -height / 2);
  scaled.close();
  return pen.getImageData(0, 0, canvas.width, canvas.height);
}
