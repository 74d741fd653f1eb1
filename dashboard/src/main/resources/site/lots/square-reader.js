// Reads squares off a picture. The shed does it, to which the picture is sent, small and in JPEG: that asks no
// more of a phone than a camera. A browser that can read them itself is asked first, and alone in the barn.
import { askAbout } from '../lib/api.js';

/** Of the picture that is sent, in pixels: a label a fifth as wide is read well. */
const LONGEST_SIDE = 800;
const QUALITIES = [0.5, 0.3, 0.1];
/** Of the picture in base64; the shed takes bodies of 64 KiB. */
const MOST_CHARACTERS = 60_000;

/**
 * Returns what reads squares here.
 * @returns {Promise<(picture: HTMLVideoElement | ImageBitmap) => Promise<string[]>>} tells what the squares
 *   in a picture say; fails as every request does
 */
export async function squareReader() {
  const formats = await globalThis.BarcodeDetector?.getSupportedFormats().catch(() => []);
  if (!formats?.includes('qr_code')) {
    return byTheShed;
  }
  const own = new BarcodeDetector({ formats: ['qr_code'] });
  return async (picture) => {
    let found;
    try {
      found = await own.detect(picture);
    } catch {
      return byTheShed(picture); // Some phones have a reader by name only.
    }
    return found.length > 0
      ? found.map(({ rawValue }) => rawValue)
      : byTheShed(picture).catch(() => []); // In the barn its own word has to do.
  };
}

async function byTheShed(picture) {
  return (await askAbout('/api/squares', { jpeg: small(picture) })).says;
}

/** The picture as the shed takes it: JPEG in base64. */
function small(picture) {
  const width = picture.videoWidth ?? picture.width;
  const height = picture.videoHeight ?? picture.height;
  const scale = Math.min(1, LONGEST_SIDE / Math.max(width, height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.round(width * scale);
  canvas.height = Math.round(height * scale);
  canvas.getContext('2d').drawImage(picture, 0, 0, canvas.width, canvas.height);
  let jpeg = '';
  for (const quality of QUALITIES) {
    jpeg = canvas.toDataURL('image/jpeg', quality).split(',')[1];
    if (jpeg.length <= MOST_CHARACTERS) {
      break;
    }
  }
  return jpeg;
}
