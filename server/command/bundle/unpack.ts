/**
 * Reads a bundle that may come from anybody. Nothing in it is believed before it was looked at: names, sizes, links and digests; what is
 * wrong with it is told in a sentence, and then nothing of it is handed out.
 */
import { inflateRawSync } from 'node:zlib';
import { createHash } from 'node:crypto';
import { MANIFEST, manifestOf, type Manifest } from './manifest.js';
import { keyOf, trouble } from './names.js';

/** Bytes, and files. Own choice: many times what a rig with a year of logs takes, and far less than a small machine holds. */
export const limits = { archive: 128e6, each: 32e6, all: 128e6, manifest: 1e6, files: 500 } as const;

/** Why an archive is not opened. */
export class BadBundle extends Error {}
export interface Unpacked {
    readonly manifest: Manifest;
    /** By name, the manifest included. */
    readonly files: ReadonlyMap<string, Uint8Array>;
}
interface Entry {
    readonly name: string;
    readonly rawName: Buffer;
    readonly method: number;
    readonly flags: number;
    readonly packed: number;
    readonly size: number;
    readonly header: number;
}
// Marks and lengths of the archive's records, as its published format has them (APPNOTE.TXT of the zip format, 4.3).
const [END, CENTRAL, LOCAL] = [0x06054b50, 0x02014b50, 0x04034b50];
const [END_LENGTH, CENTRAL_LENGTH, LOCAL_LENGTH] = [22, 46, 30];
const ENCRYPTED = 1 | 64;
const [STORED, DEFLATED] = [0, 8];
// File types of the upper half of the attributes, as made on Unix (POSIX <sys/stat.h>).
const [TYPE, REGULAR, FOLDER] = [0o170000, 0o100000, 0o040000];
const damaged = (what: string) => new BadBundle(`It is damaged: ${what}.`);

/**
 * All of an archive, looked at before anything of it is handed out.
 * @throws BadBundle where something is wrong with it, in a sentence for whoever has it
 */
export function unpack(archive: Uint8Array): Unpacked {
    if (archive.length > limits.archive) throw new BadBundle(`It is larger than ${limits.archive / 1e6} MB.`);
    const b = Buffer.from(archive.buffer, archive.byteOffset, archive.length);
    const entries = entriesOf(b);
    const files = new Map<string, Uint8Array>();
    let all = 0;
    for (const e of entries) {
        const most = Math.min(e.name === MANIFEST ? limits.manifest : limits.each, limits.all - all);
        const content = contentOf(b, e, most);
        all += content.length;
        files.set(e.name, content);
    }
    const told = files.get(MANIFEST);
    if (!told) throw new BadBundle(`It is no bundle of a rig: ${MANIFEST} is missing in it.`);
    const manifest = manifestOf(told.toString());
    if (!manifest) throw new BadBundle(`It is no bundle that this version can open: ${MANIFEST} is not as it should be.`);
    const listed = new Map(manifest.files.map(f => [f.name, f]));
    if (listed.size !== manifest.files.length) throw new BadBundle(`${MANIFEST} lists a file twice.`);
    for (const name of files.keys()) if (name !== MANIFEST && !listed.has(name)) throw new BadBundle(`${shown(name)} is in it and not in its ${MANIFEST}.`);
    for (const f of manifest.files) {
        const content = files.get(f.name);
        if (!content || f.name === MANIFEST) throw new BadBundle(`${shown(f.name)} is listed and not in it.`);
        if (content.length !== f.bytes || createHash('sha256').update(content).digest('hex') !== f.sha256) throw damaged(`${shown(f.name)} is not what ${MANIFEST} says`);
    }
    return { manifest, files };
}
/** A name from an archive, on a terminal. */
const shown = (name: string) => JSON.stringify(name.length > 80 ? `${name.slice(0, 80)}…` : name).replace(/[\u007f-\u009f\u200e\u200f\u202a-\u202e\u2066-\u2069]/g, c => `\\u${c.charCodeAt(0).toString(16).padStart(4, '0')}`);

function entriesOf(b: Buffer): Entry[] {
    const end = endOf(b);
    const [disk, diskOfList, here, count, length, start] = [b.readUInt16LE(end + 4), b.readUInt16LE(end + 6), b.readUInt16LE(end + 8), b.readUInt16LE(end + 10), b.readUInt32LE(end + 12), b.readUInt32LE(end + 16)];
    if (count > limits.files) throw new BadBundle(`It holds more than ${limits.files} files.`);
    if (disk || diskOfList || here !== count || start + length !== end) throw damaged('its list of files is not where it should be');
    const entries: Entry[] = [];
    const names = new Map<string, string>();
    let at = start;
    for (let i = 0; i < count; i++) {
        if (at + CENTRAL_LENGTH > end || b.readUInt32LE(at) !== CENTRAL) throw damaged('its list of files breaks off');
        const [flags, method, packed, size, nameLength, extra, comment, header] = [b.readUInt16LE(at + 8), b.readUInt16LE(at + 10), b.readUInt32LE(at + 20), b.readUInt32LE(at + 24), b.readUInt16LE(at + 28), b.readUInt16LE(at + 30), b.readUInt16LE(at + 32), b.readUInt32LE(at + 42)];
        const next = at + CENTRAL_LENGTH + nameLength + extra + comment;
        if (next > end) throw damaged('its list of files breaks off');
        const rawName = b.subarray(at + CENTRAL_LENGTH, at + CENTRAL_LENGTH + nameLength);
        const name = nameIn(rawName);
        const type = b.readUInt32LE(at + 38) >>> 16 & TYPE;
        const isFolder = name.endsWith('/');
        const bare = isFolder ? name.slice(0, -1) : name;
        const wrong = trouble(bare);
        if (wrong) throw new BadBundle(`The name ${shown(name)} in it ${wrong}.`);
        if (type && type !== (isFolder ? FOLDER : REGULAR)) throw new BadBundle(`${shown(name)} in it is no plain file.`);
        const before = names.get(keyOf(bare));
        if (before !== undefined) throw new BadBundle(`${shown(before)} and ${shown(name)} in it are one file on some machines.`);
        names.set(keyOf(bare), name);
        if (flags & ENCRYPTED) throw new BadBundle(`${shown(name)} in it is locked by a password.`);
        if (isFolder ? size || packed : method !== STORED && method !== DEFLATED) throw damaged(`${shown(name)} is packed in a way that is not known`);
        if (!isFolder) entries.push({ name, rawName, method, flags, packed, size, header });
        at = next;
    }
    if (at !== end) throw damaged('its list of files is longer than it says');
    for (const { name } of entries) {
        for (let cut = name.indexOf('/'); cut >= 0; cut = name.indexOf('/', cut + 1)) {
            const above = names.get(keyOf(name.slice(0, cut)));
            if (above !== undefined && !above.endsWith('/')) throw new BadBundle(`${shown(above)} in it is a file and a folder at once.`);
        }
    }
    apart(b, entries, start);
    return entries;
}
/** The end record stands last; a remark behind it may follow. */
function endOf(b: Buffer): number {
    for (let at = b.length - END_LENGTH; at >= Math.max(0, b.length - END_LENGTH - 0xffff); at--) {
        if (b.readUInt32LE(at) === END && at + END_LENGTH + b.readUInt16LE(at + 20) === b.length) return at;
    }
    throw new BadBundle('It is no zip archive, or it breaks off.');
}
function nameIn(raw: Buffer): string {
    try {
        return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(raw);
    } catch {
        throw new BadBundle('A name in it is no UTF-8.');
    }
}
const dataOf = (b: Buffer, e: Entry) => e.header + LOCAL_LENGTH + b.readUInt16LE(e.header + 26) + b.readUInt16LE(e.header + 28);
/** Each file has its own stretch of the archive: one that several share would grow on unpacking. */
function apart(b: Buffer, entries: readonly Entry[], until: number): void {
    let free = 0;
    for (const e of [...entries].sort((x, y) => x.header - y.header)) {
        if (e.header < free || e.header + LOCAL_LENGTH > until || b.readUInt32LE(e.header) !== LOCAL) throw damaged(`${shown(e.name)} is not where the list says`);
        const data = dataOf(b, e);
        if (data + e.packed > until) throw damaged(`${shown(e.name)} breaks off`);
        if (!b.subarray(e.header + LOCAL_LENGTH, e.header + LOCAL_LENGTH + b.readUInt16LE(e.header + 26)).equals(e.rawName)) throw damaged(`${shown(e.name)} has two names`);
        free = data + e.packed;
    }
}
/** What comes out is counted while it comes out; the size in the list is only compared. */
function contentOf(b: Buffer, e: Entry, most: number): Buffer {
    const data = dataOf(b, e);
    const packed = b.subarray(data, data + e.packed);
    const tooLarge = () => new BadBundle(`${shown(e.name)} in it, or all together, is larger than a bundle may be.`);
    let content: Buffer;
    if (e.method === STORED) {
        if (packed.length > most) throw tooLarge();
        content = Buffer.from(packed);
    } else {
        try {
            content = inflateRawSync(packed, { maxOutputLength: Math.max(1, most) });
        } catch (error) {
            throw (error as NodeJS.ErrnoException).code === 'ERR_BUFFER_TOO_LARGE' ? tooLarge() : damaged(`${shown(e.name)} cannot be unpacked`);
        }
    }
    if (content.length !== e.size) throw damaged(`${shown(e.name)} is not as long as the list says`);
    return content;
}
