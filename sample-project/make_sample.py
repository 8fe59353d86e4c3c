#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-2.0-or-later
"""Make the sample terrain and vector data again, always the same.

The land, its names and its people are invented; only the coordinate system is
real.  Needs numpy and GDAL's Python bindings.  Writes terrain.tif and
sample.gpkg; make_project.py then makes the QGIS project.

Inside this script x is metres east and y metres north of the south-west
corner, and row 0 of every array is the southernmost row.
"""
import argparse
import heapq
import math
import os

import numpy as np
from osgeo import gdal, ogr, osr

gdal.UseExceptions()
ogr.UseExceptions()

SEED = 20418
EPSG = 32621
EAST0, NORTH0 = 631500.0, 5405500.0   # south-west corner
SIZE = 3000.0                         # metres, both ways
CELL = 5.0                            # DEM cell
N = int(SIZE / CELL)
COVER_CELL = 10.0
NC = int(SIZE / COVER_CELL)
NODATA = -9999.0
STAMP = "2024-05-01T00:00:00.000Z"    # pinned, so that the file stays the same

CLASSES = ["open ground", "wet ground", "heath", "scattered trees",
           "open woods", "tall forest", "mixed forest", "young growth",
           "brush", "thicket", "water", "bare rock"]
C = {name: i + 1 for i, name in enumerate(CLASSES)}

LAKE_LEVEL = 186.0


# Places that shape the land and the story, in local metres.
CAMP = (820.0, 1560.0)
STAND = (2240.0, 1615.0)
CLIFFS = [(2130.0, 2150.0, 380.0, 21.0), (2350.0, 415.0, 300.0, 15.0)]  # x, y, length, height
TARN = (1290.0, 2645.0)
RILL_X = (1150.0, 2000.0)             # where the rill joins the brook
RILL_LEAST = 1000                     # cells that must drain through it
RILL_LENGTH = 820.0
DAM_X = 2128.0
DAM_RISE = 1.9
WALL = [(1215, 770), (1330, 900), (1375, 1060), (1500, 1270), (1490, 1420), (1440, 1560),
        (1500, 1700), (1610, 1830), (1625, 2020), (1545, 2170), (1590, 2340)]
LANE = [(1110, 1690), (1320, 1795), (1490, 1865), (1630, 1880), (1790, 1860), (2010, 1770)]
POWER = [(2330, 3000), (2590, 1560), (2860, 0)]
TRAIL = [(2.5, 760), (620, 660), (1290, 590), (2060, 640), (2997.5, 560)]
LANDING = (700.0, 1165.0)


# --------------------------------------------------------------- small tools

def smoothstep(t):
    t = np.clip(t, 0.0, 1.0)
    return t * t * (3.0 - 2.0 * t)


def centres(n, cell, start=0.0):
    c = start + (np.arange(n) + 0.5) * cell
    return np.meshgrid(c, c)


def blur(a, sigma):
    """Gaussian blur, sigma in cells, mirrored at the edges."""
    r = max(1, int(3 * sigma + 0.5))
    k = np.exp(-0.5 * (np.arange(-r, r + 1) / sigma) ** 2)
    k /= k.sum()
    for axis in (0, 1):
        pad = [(0, 0), (0, 0)]
        pad[axis] = (r, r)
        p = np.pad(a, pad, mode="symmetric")
        out = np.zeros_like(a)
        for i, w in enumerate(k):
            out += w * np.take(p, np.arange(i, i + a.shape[axis]), axis=axis)
        a = out
    return a


def noise(rng, n, cell, longest, shortest, beta, stretch=1.0, angle=0.0):
    """Random field, mean 0 and deviation 1, wavelengths in metres.

    Stretch > 1 draws the shapes out along `angle` (degrees north of east).
    """
    m = 2 * n
    white = np.fft.fft2(rng.standard_normal((m, m)))
    f = np.fft.fftfreq(m, cell)
    fx, fy = np.meshgrid(f, f)
    c, s = math.cos(math.radians(angle)), math.sin(math.radians(angle))
    k = np.hypot((fx * c + fy * s) * stretch, fy * c - fx * s)
    k[0, 0] = 1.0
    amp = k ** (-beta / 2.0)
    amp *= 1.0 - np.exp(-(k * longest) ** 4)
    amp *= np.exp(-(k * shortest) ** 4)
    amp[0, 0] = 0.0
    a = np.real(np.fft.ifft2(white * amp))[:n, :n]
    return (a - a.mean()) / a.std()


def mem_raster(a, cell, gtype=gdal.GDT_Float32):
    ds = gdal.GetDriverByName("MEM").Create("", a.shape[1], a.shape[0], 1, gtype)
    ds.SetGeoTransform((0, cell, 0, 0, 0, cell))
    ds.GetRasterBand(1).WriteArray(a)
    return ds


def distance_to(mask, cell):
    """Distance in metres of every cell to the nearest True cell."""
    src = mem_raster(mask.astype(np.uint8), cell, gdal.GDT_Byte)
    dst = mem_raster(np.zeros(mask.shape, np.float32), cell)
    gdal.ComputeProximity(src.GetRasterBand(1), dst.GetRasterBand(1),
                          ["VALUES=1", "DISTUNITS=PIXEL"])
    return dst.GetRasterBand(1).ReadAsArray().astype(float) * cell


def resample(a, factor):
    """Finer grid by the cubic B-spline of GDAL's warper."""
    src = mem_raster(a, factor)
    dst = mem_raster(np.zeros((a.shape[0] * factor,) * 2, np.float32), 1)
    gdal.Warp(dst, src, resampleAlg="cubicspline")
    return dst.GetRasterBand(1).ReadAsArray().astype(float)


def block_mean(a, k):
    n = a.shape[0] // k
    return a.reshape(n, k, n, k).mean(axis=(1, 3))


def sample(a, x, y, cell=CELL):
    """Bilinear value of a grid at points."""
    n = a.shape[0]
    fx = np.clip(np.asarray(x) / cell - 0.5, 0, n - 1.001)
    fy = np.clip(np.asarray(y) / cell - 0.5, 0, n - 1.001)
    i, j = fx.astype(int), fy.astype(int)
    u, v = fx - i, fy - j
    return ((a[j, i] * (1 - u) + a[j, i + 1] * u) * (1 - v)
            + (a[j + 1, i] * (1 - u) + a[j + 1, i + 1] * u) * v)


def lengths(line):
    d = np.hypot(*np.diff(line, axis=0).T)
    return np.concatenate([[0.0], np.cumsum(d)])


def respace(line, step):
    s = lengths(line)
    t = np.linspace(0, s[-1], max(2, int(round(s[-1] / step)) + 1))
    return np.column_stack([np.interp(t, s, line[:, 0]),
                            np.interp(t, s, line[:, 1])])


def soften(line, rounds, step):
    """Respace a line and round it off; its ends stay."""
    line = respace(np.asarray(line, float), step)
    for _ in range(rounds):
        line[1:-1] = 0.25 * line[:-2] + 0.5 * line[1:-1] + 0.25 * line[2:]
    return line


def wander(line, width, pace=62.0):
    """Let a line swing from side to side a little; its ends stay."""
    s = lengths(line)
    t = np.gradient(line, axis=0)
    t /= np.hypot(t[:, 0], t[:, 1])[:, None]
    swing = np.sin(s / pace + 2 * np.sin(s / (4.5 * pace))) + 0.5 * np.sin(1.8 * s / pace + 1.3)
    swing *= width * smoothstep(s / 60) * smoothstep((s[-1] - s) / 60)
    return line + np.column_stack([-t[:, 1], t[:, 0]]) * swing[:, None]


def simplify(line, tol):
    """Indices kept by the Douglas-Peucker method."""
    keep = {0, len(line) - 1}
    stack = [(0, len(line) - 1)]
    while stack:
        a, b = stack.pop()
        if b - a < 2:
            continue
        p, q = line[a], line[b]
        d = q - p
        size = math.hypot(d[0], d[1])
        m = line[a + 1:b] - p
        if size < 1e-9:
            off = np.hypot(m[:, 0], m[:, 1])
        else:
            off = np.abs(m[:, 0] * d[1] - m[:, 1] * d[0]) / size
        k = int(np.argmax(off))
        if off[k] > tol:
            k += a + 1
            keep.add(k)
            stack += [(a, k), (k, b)]
    return sorted(keep)


def near_line(line, reach, n=N, cell=CELL):
    """For every cell within reach of a line: distance, place along, side.

    Side is +1 left of the line.  Cells out of reach have distance inf.
    """
    dist = np.full((n, n), np.inf)
    along = np.zeros((n, n))
    side = np.zeros((n, n))
    s = lengths(line)
    for k in range(len(line) - 1):
        (x0, y0), (x1, y1) = line[k], line[k + 1]
        i0 = max(0, int((min(x0, x1) - reach) / cell))
        i1 = min(n, int((max(x0, x1) + reach) / cell) + 2)
        j0 = max(0, int((min(y0, y1) - reach) / cell))
        j1 = min(n, int((max(y0, y1) + reach) / cell) + 2)
        if i0 >= i1 or j0 >= j1:
            continue
        gx, gy = np.meshgrid((np.arange(i0, i1) + 0.5) * cell,
                             (np.arange(j0, j1) + 0.5) * cell)
        dx, dy = x1 - x0, y1 - y0
        size2 = dx * dx + dy * dy
        if size2 == 0:
            continue
        t = np.clip(((gx - x0) * dx + (gy - y0) * dy) / size2, 0, 1)
        d = np.hypot(gx - x0 - t * dx, gy - y0 - t * dy)
        w = (slice(j0, j1), slice(i0, i1))
        better = d < dist[w]
        dist[w] = np.where(better, d, dist[w])
        along[w] = np.where(better, s[k] + t * math.sqrt(size2), along[w])
        left = np.sign(dx * (gy - y0) - dy * (gx - x0))
        side[w] = np.where(better, left, side[w])
    dist[dist > reach] = np.inf
    return dist, along, side


# ------------------------------------------------------------------ drainage

def neighbours(n):
    return [(-1, -1), (-1, 0), (-1, 1), (0, -1), (0, 1), (1, -1), (1, 0), (1, 1)]


def drainage(z, eps=1e-4):
    """Fill hollows from the edge inwards.

    Returns the filled surface, the cell each cell drains to (-1 at the edge)
    and the cells in order, lowest outlet first.
    """
    n = z.shape[0]
    w = n + 2                         # one closed cell all round
    zp = np.full((w, w), 1e9)
    zp[1:-1, 1:-1] = z
    flat = zp.ravel().tolist()
    done = np.ones((w, w), bool)
    done[1:-1, 1:-1] = False
    done = bytearray(done.astype(np.uint8).ravel().tobytes())
    to = [-1] * (w * w)
    heap = []
    for k in range(1, n + 1):
        for p in (w + k, n * w + k, k * w + 1, k * w + n):
            if not done[p]:
                done[p] = 1
                heap.append((flat[p], p))
    heapq.heapify(heap)
    steps = [dj * w + di for dj, di in neighbours(n)]
    order = []
    push, pop = heapq.heappush, heapq.heappop
    while heap:
        zc, p = pop(heap)
        order.append(p)
        for st in steps:
            q = p + st
            if not done[q]:
                done[q] = 1
                to[q] = p
                if flat[q] <= zc + eps:
                    flat[q] = zc + eps
                push(heap, (flat[q], q))
    filled = np.array(flat).reshape(w, w)
    # Steepest way down on the filled surface beats the order of filling.
    best = np.array(to).reshape(w, w)
    drop = np.full((w, w), 0.0)
    index = np.arange(w * w).reshape(w, w)
    inner = (slice(1, -1), slice(1, -1))
    for dj, di in neighbours(n):
        sl = (slice(1 + dj, w - 1 + dj), slice(1 + di, w - 1 + di))
        g = (filled[inner] - filled[sl]) / math.hypot(dj, di)
        use = (g > drop[inner]) & (best[inner] >= 0)
        drop[inner] = np.where(use, g, drop[inner])
        best[inner] = np.where(use, index[sl], best[inner])
    order = np.array(order)

    def unpad(p):
        return (p // w - 1) * n + (p % w - 1)

    dest = best[inner].ravel()
    dest = np.where(dest >= 0, unpad(dest), -1)
    order = unpad(order)
    filled = filled[inner]
    # Lowest first: needed because the steepest way may jump the heap order.
    order = order[np.argsort(filled.ravel()[order], kind="stable")]
    return filled, dest, order


def gather(dest, order):
    """Number of cells that drain through each cell."""
    area = [1.0] * len(dest)
    to = dest.tolist()
    for p in order[::-1].tolist():
        if to[p] >= 0:
            area[to[p]] += area[p]
    return np.array(area)


def erode(rng, z, cell, rounds, strength, creep):
    """Let streams cut down and slopes creep, for a few long rounds."""
    n = z.shape[0]
    for _ in range(rounds):
        # Unevenness, anew each round, keeps streams off the grid's directions.
        uneven = 0.8 * noise(rng, n, cell, 120, 15, 1.6)
        filled, dest, order = drainage(z + uneven)
        area = gather(dest, order) * cell * cell
        pull = (strength * np.sqrt(area) / cell).tolist()
        h = z.ravel().tolist()
        to = dest.tolist()
        for p in order.tolist():
            r = to[p]
            if r >= 0 and h[r] < h[p]:
                h[p] = (h[p] + pull[p] * h[r]) / (1.0 + pull[p])
        z = np.array(h).reshape(n, n)
        z = z + creep * (blur(z, 25.0 / cell) - z)
    return z


def least_cost(cost, start, end, cell, z=None, steep=0.0):
    """Cheapest way between two points on a grid (eight neighbours)."""
    n = cost.shape[0]
    c = cost.ravel().tolist()
    h = z.ravel().tolist() if z is not None else None
    a = int(start[1] / cell) * n + int(start[0] / cell)
    b = int(end[1] / cell) * n + int(end[0] / cell)
    best = {a: 0.0}
    came = {}
    heap = [(0.0, a)]
    seen = set()
    while heap:
        d, p = heapq.heappop(heap)
        if p == b:
            break
        if p in seen:
            continue
        seen.add(p)
        j, i = divmod(p, n)
        for dj, di in neighbours(n):
            jj, ii = j + dj, i + di
            if not (0 <= jj < n and 0 <= ii < n):
                continue
            q = jj * n + ii
            run = cell * math.hypot(dj, di)
            e = run * 0.5 * (c[p] + c[q])
            if h is not None:
                g = (h[q] - h[p]) / run
                e *= 1.0 + steep * g * g
            if d + e < best.get(q, 1e30):
                best[q] = d + e
                came[q] = p
                heapq.heappush(heap, (d + e, q))
    way = [b]
    while way[-1] != a:
        way.append(came[way[-1]])
    way = np.array(way[::-1])
    line = np.column_stack([(way % n + 0.5) * cell, (way // n + 0.5) * cell])
    line[0], line[-1] = start, end
    return line


# ------------------------------------------------------------------- terrain

def valley_y(x):
    return (1260 + 100 * np.sin(2 * np.pi * (x + 250) / 2600)
            + 35 * np.sin(2 * np.pi * x / 830 + 1.0))


def valley_floor(x):
    return np.interp(x, [-600, 250, 850, 1100, 1500, 2000, 2450, 2700, 3600],
                     [198, 187.0, 186.0, 182.0, 176.5, 173.0, 169.5, 165, 152])


def hill(x, y, cx, cy, height, sx, sy, turn=0.0):
    c, s = math.cos(math.radians(turn)), math.sin(math.radians(turn))
    u = ((x - cx) * c + (y - cy) * s) / sx
    v = ((y - cy) * c - (x - cx) * s) / sy
    return height * np.exp(-0.5 * (u * u + v * v))


def rough_land(rng):
    """The land at 10 m with a margin, worn down by its own streams."""
    cell, margin = 10.0, 400.0
    n = int((SIZE + 2 * margin) / cell)
    x, y = centres(n, cell, -margin)
    d = y - valley_y(x)
    north = 108 * smoothstep((d - 40) / 1550) ** 0.9
    south = 88 * smoothstep((-d - 40) / 1250) ** 0.9
    z = valley_floor(x) + np.where(d > 0, north, south)
    z += hill(x, y, 520, 2560, 30, 420, 170, 20)
    z += hill(x, y, 2150, 2700, 26, 420, 180, 14)
    z += hill(x, y, 1330, 2800, -26, 170, 420)
    z += hill(x, y, 2330, 250, 30, 420, 190, 18)
    z += hill(x, y, 900, 150, 22, 330, 170, 18)
    z += hill(x, y, 2240, 1610, 15, 150, 85, 22)
    calm = 0.25 + 0.75 * smoothstep((np.abs(d) - 90) / 420)
    z += calm * 11.0 * noise(rng, n, cell, 900, 90, 3.2, 1.9, 24)
    z += calm * 3.2 * noise(rng, n, cell, 260, 50, 2.4, 1.6, 24)
    z = erode(rng, z, cell, 10, 0.014, 0.25)
    z = blur(z, 1.5)
    z = resample(z, int(cell / CELL))
    k = int(margin / CELL)
    return z[k:k + N, k:k + N]


def follow_contour(z, x, y, length, step=8.0):
    """Walk along the contour both ways from a point; high ground on the left."""
    s = blur(z, 7)
    gy, gx = np.gradient(s, CELL)
    halves = []
    for way in (1, -1):
        px, py, pts = x, y, []
        for _ in range(int(length / 2 / step)):
            u, v = sample(gx, px, py), sample(gy, px, py)
            g = math.hypot(u, v)
            px, py = px + way * step * v / g, py - way * step * u / g
            pts.append((px, py))
        halves.append(pts)
    return np.array(halves[1][::-1] + [(x, y)] + halves[0])


def add_cliff(z, x, y, cx, cy, length, height):
    """Turn part of a slope into a step along one of its contours.

    The land above the contour is lifted and the land below it lowered, less
    and less with the distance, so that water still runs down everywhere.
    """
    s = blur(z, 7)
    gy, gx = np.gradient(s, CELL)
    line = follow_contour(z, cx, cy, 1.6 * length)
    up = s - float(sample(s, cx, cy))
    pitch = max(0.08, float(np.hypot(sample(gx, cx, cy), sample(gy, cx, cy))))
    a, b = line[0], line[-1]
    turn = math.degrees(math.atan2(b[1] - a[1], b[0] - a[0]))
    where = hill(x, y, *line.mean(axis=0), 1.0, 0.5 * length, 0.45 * length, turn) ** 2
    fade = np.exp(-0.5 * (up / (95.0 * pitch)) ** 2)
    return z + 0.5 * height * where * fade * np.tanh(up / (3.0 * pitch)), line


def cliff_part(z, line, least=7.0):
    """The part of a cliff line where the step is real, and its height."""
    t = np.gradient(line, axis=0)
    t /= np.hypot(t[:, 0], t[:, 1])[:, None]
    nx, ny = -t[:, 1], t[:, 0]
    step = (sample(z, line[:, 0] + 10 * nx, line[:, 1] + 10 * ny)
            - sample(z, line[:, 0] - 10 * nx, line[:, 1] - 10 * ny))
    good = np.flatnonzero(step >= least)
    part = line[good[0]:good[-1] + 1]
    return part, float(np.percentile(step[good[0]:good[-1] + 1], 75))


def brook_bed(z, line, start=None, end=None):
    """Bed height along a stream line: never rises downstream."""
    s = lengths(line)
    bed = np.minimum.accumulate(sample(z, line[:, 0], line[:, 1]) - 0.9)
    if start is not None:
        bed = np.minimum(bed, start)
    if end is not None:
        bed = np.maximum(bed, end)
    k = np.exp(-0.5 * (np.arange(-9, 10) / 4.0) ** 2)
    k /= k.sum()
    bed = np.convolve(np.pad(bed, 9, mode="edge"), k, mode="valid")
    if start is not None:
        bed = np.minimum(bed, start)
    return s, np.minimum.accumulate(bed)


def carve(z, line, s, bed, bank=0.30):
    dist, along, _ = near_line(line, 60.0)
    b = np.interp(along, s, bed)
    z = np.where(np.isfinite(dist), np.minimum(z, b + bank * np.maximum(dist - 7.5, 0)), z)
    return np.where(dist <= 7.5, b, z)


def trace_down(dest, p):
    way = [p]
    while dest[way[-1]] >= 0:
        way.append(dest[way[-1]])
    return np.array(way)


def trace_up(dest, area, p, least):
    """Upstream along the largest feeder."""
    feeders = {}
    for q, r in enumerate(dest.tolist()):
        if r >= 0 and area[q] >= least:
            feeders.setdefault(r, []).append(q)
    way = [p]
    while feeders.get(way[-1]):
        way.append(max(feeders[way[-1]], key=lambda q: area[q]))
    return np.array(way[::-1])


def cells_to_line(p):
    return np.column_stack([(p % N + 0.5) * CELL, (p // N + 0.5) * CELL])


def make_terrain(rng):
    x, y = centres(N, CELL)
    z = rough_land(rng)

    # Cliffs: one on the north slope, one on the south slope.
    cliffs = []
    for cx, cy, size, h in CLIFFS:
        z, line = add_cliff(z, x, y, cx, cy, size, h)
        cliffs.append(line)

    # Fine relief: knobs on the high ground, hummocks everywhere.
    high = smoothstep((z - 215) / 60)
    z += (0.2 + 0.7 * high) * noise(rng, N, CELL, 160, 30, 3.0, 1.6, 24)
    z += 0.13 * noise(rng, N, CELL, 30, 10, 1.0)

    # Bog flat on the valley floor.
    shape = noise(rng, N, CELL, 300, 60, 2.6)
    bog = hill(x, y, 1880, valley_y(1880.0) + 30, 1.0, 260, 105, -6) + 0.06 * shape
    flat = smoothstep((bog - 0.42) / 0.3)
    level = valley_floor(x) + 0.8 + 0.14 * noise(rng, N, CELL, 60, 14, 1.4)
    z = z * (1 - flat) + level * flat

    # Lake, and a tarn on the north upland.
    shore = noise(rng, N, CELL, 350, 110, 2.8)
    lake = hill(x, y, 540, valley_y(540.0) + 5, 1.0, 215, 105, 10) + 0.13 * shore > 0.55
    tarn = hill(x, y, *TARN, 1.0, 80, 52, 24) + 0.08 * shore > 0.55
    water = {}
    for name, mask in (("lake", lake), ("tarn", tarn)):
        far = distance_to(mask, CELL)
        ring = (far > 0) & (far < 20)
        lev = LAKE_LEVEL if name == "lake" else round(float(np.percentile(z[ring], 20)), 1)
        reach = 150.0 if name == "lake" else 60.0
        w = smoothstep(far / reach)
        z = w * z + (1 - w) * (lev + 0.5 + 0.035 * far)
        z = np.maximum(z, np.where(far < reach, lev + 0.3 - 0.08 * np.maximum(far - 15, 0), z))
        z[mask] = lev
        water[name] = (mask, lev)

    # Streams run where the water goes.
    filled, dest, order = drainage(z)
    area = gather(dest, order)
    lake_cells = np.flatnonzero(lake.ravel())
    low = lake_cells[np.argmax(area[lake_cells])]
    down = trace_down(dest, low)
    down = down[~lake.ravel()[down]]
    main = soften(cells_to_line(down), 40, 6.0)
    main = soften(wander(main, 8.0, 31.0), 3, 6.0)

    feeder_ok = lake.ravel()[dest] & ~lake.ravel() & (dest >= 0)
    inlet = np.flatnonzero(feeder_ok)
    inlet = inlet[np.argmax(area[inlet])]
    upper = soften(cells_to_line(trace_up(dest, area, inlet, 2500)), 12, 6.0)
    inside = sample_mask(distance_to(lake, CELL) < 12, upper)
    if inside.any():
        upper = upper[:int(np.argmax(inside)) + 1]

    # A rill: the largest feeder of the brook within the box given.
    on_main = lake.ravel().copy()
    on_main[down] = True
    cand = np.flatnonzero((dest >= 0) & ~on_main)
    cand = cand[on_main[dest[cand]]]
    cx, cy = (cand % N) * CELL, (cand // N) * CELL
    x0, x1 = RILL_X
    cand = cand[(cx > x0) & (cx < x1) & (cy > np.interp(cx, main[:, 0], main[:, 1]))]
    mouth = cand[np.argmax(area[cand])]
    rill = cells_to_line(trace_up(dest, area, mouth, RILL_LEAST))
    k = np.argmin(np.hypot(*(main - rill[-1]).T))
    k = min(k + 1, len(main) - 1)
    rill = soften(np.vstack([rill, main[k]]), 12, 6.0)
    rill = rill[lengths(rill) >= lengths(rill)[-1] - RILL_LENGTH]

    s_main, bed = brook_bed(z, main, start=LAKE_LEVEL)
    s_up, bed_up = brook_bed(z, upper, end=LAKE_LEVEL)
    s_rill, bed_rill = brook_bed(z, rill, end=bed[k])
    z = carve(z, rill, s_rill, bed_rill)
    z = carve(z, upper, s_up, bed_up)
    z = carve(z, main, s_main, bed)

    # Beaver pond: a dam across the brook, water standing behind it.
    kd = int(np.argmin(np.abs(main[:, 0] - DAM_X)))
    dam_s = s_main[kd]
    pond_level = round(float(bed[kd]) + DAM_RISE, 1)
    bed[:kd] = np.maximum(bed[:kd], pond_level + 0.0004 * (dam_s - s_main[:kd]))
    z = carve(z, main, s_main, bed)
    dist, along, _ = near_line(main, 170.0)
    pond = (np.isfinite(dist) & (along < dam_s) & (along > dam_s - 250 + 30 * shore)
            & (z < pond_level + 0.15))
    crest = np.isfinite(dist) & (along >= dam_s) & (along < dam_s + 8) & (z < pond_level + 0.4)
    z[crest] = pond_level + 0.4
    pond = keep_largest(pond)
    z[pond] = pond_level
    z[lake] = LAKE_LEVEL
    water["pond"] = (pond, pond_level)

    z = np.round(z, 1)
    wet_main = sample_mask(pond, main)
    into = int(np.flatnonzero(wet_main)[0]) if wet_main.any() else kd
    out = int(np.searchsorted(s_main, dam_s + 14))
    streams = [("Vennick Brook", upper), ("Vennick Brook", main[:into + 1]),
               ("Vennick Brook", main[out:]), ("Spring Rill", rill)]
    streams = [(name, keep_vertices(line, 0.6)) for name, line in streams]
    dam = main[int(np.searchsorted(s_main, dam_s + 13))]
    real_cliffs = [cliff_part(z, line) for line in cliffs]
    return z, water, streams, dam, real_cliffs, area.reshape(N, N)


def keep_vertices(line, tol):
    return np.round(line[simplify(line, tol)], 1)


def sample_mask(mask, line, cell=CELL):
    i = np.clip((line[:, 0] / cell).astype(int), 0, mask.shape[1] - 1)
    j = np.clip((line[:, 1] / cell).astype(int), 0, mask.shape[0] - 1)
    return mask[j, i]


def keep_largest(mask):
    """Largest four-connected patch of a mask."""
    todo = {tuple(c) for c in np.argwhere(mask).tolist()}
    best = []
    while todo:
        patch = [min(todo)]
        todo.discard(patch[0])
        for j, i in patch:            # grows while it is read
            for q in ((j + 1, i), (j - 1, i), (j, i + 1), (j, i - 1)):
                if q in todo:
                    todo.discard(q)
                    patch.append(q)
        if len(patch) > len(best):
            best = patch
    out = np.zeros_like(mask)
    out[tuple(np.array(best).T)] = True
    return out


# --------------------------------------------------------------------- cover

def make_cover(rng, z, water, streams, trails, area):
    n, cell = NC, COVER_CELL
    x, y = centres(n, cell)
    zc = block_mean(z, 2)
    sm = blur(zc, 2.0)
    gy, gx = np.gradient(sm, cell)
    slope = np.hypot(gx, gy)
    form = sm - blur(zc, 14.0)                 # above or below its surroundings
    above = zc - valley_floor(x)
    wet_index = blur(np.log(np.maximum(block_mean(area, 2) * CELL * CELL, 25.0)), 1.5) \
        - np.log(np.maximum(slope, 0.01))

    n1 = noise(rng, n, cell, 520, 110, 2.6, 1.5, 24)
    n2 = noise(rng, n, cell, 600, 120, 2.8, 1.3, 24)
    n3 = noise(rng, n, cell, 700, 120, 2.8)
    n4 = noise(rng, n, cell, 700, 120, 2.8, 1.4, 24)

    # How well trees do: best low down and in hollows, worst on the tops.
    grow = 1.0 - above / 78.0 - form / 14.0 + 0.75 * n1
    cls = np.full((n, n), C["mixed forest"])
    cls[grow > 0.85] = C["tall forest"]
    cls[grow < -0.15] = C["open woods"]
    cls[grow < -0.75] = C["scattered trees"]
    cls[grow < -1.25] = C["heath"]
    cls[(grow < -1.5) & (n2 > 0.7)] = C["open ground"]
    cls[(grow < -1.9) & (form > 3) & (n2 < 0.2)] = C["bare rock"]

    wooded = np.isin(cls, [C["tall forest"], C["mixed forest"], C["open woods"]])
    cls[wooded & (n2 > 1.25)] = C["open woods"]
    cls[wooded & (n3 > 1.35)] = C["young growth"]
    cls[wooded & (n3 < -1.75)] = C["brush"]
    cls[wooded & (n4 > 2.0)] = C["thicket"]
    cls[wooded & (n4 < -1.8) & (slope < 0.15)] = C["open ground"]

    # Wet flats, with thin trees at their edge.
    soak = (wet_index > 10.6) & (slope < 0.05)
    soak = blur(soak.astype(float), 1.5)
    cls[(soak > 0.35)] = C["scattered trees"]
    cls[(soak > 0.55)] = C["wet ground"]
    bog = hill(x, y, 1880, valley_y(1880.0) + 30, 1.0, 260, 105, -6) + 0.08 * n3
    cls[bog > 0.42] = C["scattered trees"]
    cls[bog > 0.50] = C["wet ground"]

    # Alders along the brook here and there.
    for name, line in streams:
        if name == "Vennick Brook":
            d = near_line(line, 60.0, n, cell)[0]
            cls[(d < 26) & (n2 < -0.35)] = C["brush"]

    # Rock along the cliffs.
    steep = block_mean(np.hypot(*np.gradient(z, CELL)), 2)
    cls[blur(steep, 1.2) > 0.31] = C["bare rock"]

    # Cleared strip under the power line.
    d, along, _ = near_line(np.array(POWER, float), 60.0, n, cell)
    strip = d < 23
    cls[strip] = np.where(np.sin(along / 120.0) + 0.6 * n2 > -0.1,
                          C["heath"], C["young growth"])[strip]

    # The wall: an old burn grown back shut.
    wall = soften(np.array(WALL, float), 6, 20.0)
    d, along, side = near_line(wall, 200.0, n, cell)
    total = lengths(wall)[-1]
    half = 65 + 4 * np.sin(along / 41.0)
    half *= np.clip(np.minimum(along, total - along) / 60.0 + 0.55, 0, 1)
    half = np.clip(half + 4 * n2, 36, 70)
    inside = np.isfinite(d) & (d < half)
    d = np.where(inside, d, 999.0)
    core = inside & (np.abs(d * side + 10 * n3) < half - 17)
    # A rocky rib makes a clear lane through it, with open woods before and behind.
    lane = near_line(soften(np.array(LANE, float), 4, 20.0), 90.0, n, cell)[0]
    cls[(lane < 62 + 12 * n4) & wooded_like(cls)] = C["open woods"]
    cls[inside] = C["brush"]
    cls[core] = C["thicket"]
    through = near_line(wall, 130.0, n, cell)[0]
    cls[(lane < 27 + 5 * n4) & np.isfinite(through)] = C["heath"]

    # People keep the trails open.
    for _, line in trails:
        d = near_line(line, 80.0, n, cell)[0]
        cls[(d < 60) & np.isin(cls, [C["brush"], C["thicket"]])] = C["mixed forest"]

    # Dry, open forest round the camp, an opening before the stand.
    camp = np.hypot(x - CAMP[0], y - CAMP[1])
    cls[(camp < 190 + 20 * n2) & np.isin(cls, [C["brush"], C["thicket"], C["young growth"],
                                               C["mixed forest"]])] = C["tall forest"]
    cls[(camp < 45 + 6 * n1)] = C["open ground"]
    stand = hill(x, y, STAND[0] + 40, STAND[1] + 20, 1.0, 120, 70, 22) + 0.06 * n2
    cls[(stand > 0.6) & wooded_like(cls)] = C["open ground"]

    lakes = np.zeros((N, N), bool)
    for mask, _ in water.values():
        lakes |= mask
    lakes = sieve(block_mean(lakes.astype(float), 2) >= 0.5, 40) == 1

    # Drop specks, but leave the water as the terrain has it.
    for _ in range(3):
        cls[lakes] = C["water"]
        cls = untouch(sieve(cls, 45))
    return cls


def wooded_like(cls):
    return np.isin(cls, [C[k] for k in ("tall forest", "mixed forest", "young growth", "brush",
                                        "thicket", "scattered trees", "open woods")])


def sieve(cls, least):
    ds = mem_raster(cls.astype(np.uint8), 1, gdal.GDT_Byte)
    out = mem_raster(np.zeros(cls.shape, np.uint8), 1, gdal.GDT_Byte)
    gdal.SieveFilter(ds.GetRasterBand(1), None, out.GetRasterBand(1), least, 4)
    return out.GetRasterBand(1).ReadAsArray().astype(int)


def untouch(cls):
    """Change cells so that no class meets itself only at a corner."""
    cls = cls.copy()
    for _ in range(50):
        a, b = cls[:-1, :-1], cls[:-1, 1:]
        c, d = cls[1:, :-1], cls[1:, 1:]
        one = (a == d) & (b != a) & (c != a)
        two = (b == c) & (a != b) & (d != b)
        if not one.any() and not two.any():
            break
        for j, i in zip(*np.nonzero(one | two)):
            q = cls[j:j + 2, i:i + 2]
            if q[0, 0] == q[1, 1] and q[0, 1] != q[0, 0] != q[1, 0]:
                q[0, 1] = q[0, 0]
            elif q[0, 1] == q[1, 0] and q[0, 0] != q[0, 1] != q[1, 1]:
                q[0, 0] = q[0, 1]
    return cls


def cover_polygons(cls):
    """Polygons with rounded edges.

    Every grid corner on a boundary is moved and kept or dropped once, for all
    polygons that use it, so no gaps or overlaps can come up.
    """
    n = cls.shape[0]
    w = n + 1
    pad = np.zeros((n + 2, n + 2), int)
    pad[1:-1, 1:-1] = cls
    up = np.zeros((w, w), bool)               # edge from a corner to the next one north
    up[:n, :] = pad[1:-1, :-1] != pad[1:-1, 1:]
    right = np.zeros((w, w), bool)            # and to the next one east
    right[:, :n] = pad[:-1, 1:-1] != pad[1:, 1:-1]
    down = np.zeros_like(up)
    down[1:, :] = up[:-1, :]
    left = np.zeros_like(right)
    left[:, 1:] = right[:, :-1]
    deg = up.astype(int) + down + left + right
    j, i = np.mgrid[0:w, 0:w]
    edge = (i == 0) | (j == 0) | (i == n) | (j == n)

    pos = np.stack([i, j], axis=-1).astype(float) * COVER_CELL
    links = [(up, 1, 0), (down, -1, 0), (right, 0, 1), (left, 0, -1)]
    free = (deg >= 2) & (deg <= 3) & ~edge
    for turn in range(12):
        total = np.zeros_like(pos)
        for has, dj, di in links:
            total += np.where(has[..., None], np.roll(pos, (-dj, -di), (0, 1)), 0)
        mean = total / np.maximum(deg, 1)[..., None]
        rate = 0.5 if turn % 2 == 0 else -0.40
        pos = np.where(free[..., None], pos + rate * (mean - pos), pos)

    # Follow each line between junctions and choose the corners to keep.
    corner = ((i == 0) | (i == n)) & ((j == 0) | (j == n))
    node = (deg > 2) | corner
    keep = node.copy()
    done = set()                              # corners already on a followed line

    def next_to(p):
        return [(p[0] + dj, p[1] + di) for has, dj, di in links if has[p]]

    def follow(p, q):
        way = [p, q]
        while not node[way[-1]] and way[-1] != p:
            a, b = next_to(way[-1])
            way.append(b if a == way[-2] else a)
        done.update(way[1:-1])
        return way

    def choose(way):
        pts = np.array([pos[p] for p in way])
        for k in simplify(pts, 1.1):
            keep[way[k]] = True

    for p in map(tuple, np.argwhere(node)):
        for q in next_to(p):
            if q not in done:
                choose(follow(p, q))
    for p in map(tuple, np.argwhere((deg == 2) & ~node)):
        if p not in done:                     # a closed ring without junction
            done.add(p)
            ring = follow(p, next_to(p)[0])
            half = len(ring) // 2
            choose(ring[:half + 1])
            choose(ring[half:])

    pos = np.round(pos, 1)
    mem = ogr.GetDriverByName("Memory").CreateDataSource("")
    lyr = mem.CreateLayer("p", None, ogr.wkbPolygon)
    lyr.CreateField(ogr.FieldDefn("v", ogr.OFTInteger))
    ds = mem_raster(cls.astype(np.uint8), 1, gdal.GDT_Byte)
    gdal.Polygonize(ds.GetRasterBand(1), None, lyr, 0)
    out = []
    for f in lyr:
        g = f.geometry()
        poly = ogr.Geometry(ogr.wkbPolygon)
        for r in range(g.GetGeometryCount()):
            pts = [(int(round(p[0])), int(round(p[1]))) for p in g.GetGeometryRef(r).GetPoints()]
            ring = ogr.Geometry(ogr.wkbLinearRing)
            for (x0, y0), (x1, y1) in zip(pts[:-1], pts[1:]):
                m = max(abs(x1 - x0), abs(y1 - y0))
                for k in range(m):
                    q = (y0 + (y1 - y0) * k // m, x0 + (x1 - x0) * k // m)
                    if keep[q]:
                        ring.AddPoint_2D(EAST0 + pos[q][0], NORTH0 + pos[q][1])
            ring.CloseRings()
            poly.AddGeometry(ring)
        out.append((CLASSES[f.GetField(0) - 1], poly))
    return out


# ------------------------------------------------- trails, points and routes

def make_trails(rng, z, water):
    """Trails take the easy way over the land."""
    cell = 20.0
    zc = block_mean(z, 4)
    grad = block_mean(np.hypot(*np.gradient(blur(z, 1.5), CELL)), 4)
    cost = np.exp(0.35 * noise(rng, zc.shape[0], cell, 500, 90, 2.2)) * (1.0 + 30.0 * grad ** 2)
    wet = np.zeros((N, N), bool)
    for mask, _ in water.values():
        wet |= mask
    cost += 200.0 * (block_mean(wet.astype(float), 4) > 0)
    legs = [least_cost(cost, a, b, cell, zc, 120.0) for a, b in zip(TRAIL[:-1], TRAIL[1:])]
    trail = wander(soften(np.vstack([legs[0]] + [leg[1:] for leg in legs[1:]]), 60, 8.0), 13.0)
    trail[0, 0], trail[-1, 0] = 0.0, SIZE
    trail = keep_vertices(trail, 0.8)
    fork = trail[int(np.argmin(np.abs(trail[:, 0] - 500)))]
    branch = wander(soften(least_cost(cost, tuple(fork), LANDING, cell, zc, 120.0), 60, 8.0), 9.0)
    return [("Tallowby Trail", trail), ("Landing Path", keep_vertices(branch, 0.8))], fork


def make_points(streams, trails, dam, fork):
    trail = trails[0][1]
    post = trail[int(np.argmin(np.hypot(trail[:, 0] - 2130, trail[:, 1] - 650)))]
    spring = [line for name, line in streams if name == "Spring Rill"][0][0]
    at = [("Camp", "camp", CAMP), ("Hunting Stand", "stand", STAND),
          ("Leaning Birch", "tree", (862.0, 1661.0)), ("Old Stump", "stump", (748.0, 1702.0)),
          ("Mossy Log", "log", (688.0, 1618.0)), ("Flat Rock", "rock", (716.0, 1519.0)),
          ("Pond Landing", "landing", (798.0, 1472.0)),
          ("Split Boulder", "boulder", (1012.0, 1604.0)),
          ("Fallen Spruce", "log", (1216.0, 1568.0)), ("Lone Pine", "tree", (1596.0, 1612.0)),
          ("High Knob", "viewpoint", (1985.0, 1835.0)),
          ("Twin Tamaracks", "tree", (2262.0, 1372.0)), ("Grey Ledge", "rock", (2215.0, 925.0)),
          ("Canoe Landing", "landing", LANDING),
          ("Spring", "spring", spring), ("Beaver Dam", "dam", dam),
          ("Trail Fork", "junction", fork), ("Red Post", "post", post)]
    return [(name, kind, (round(float(p[0]), 1), round(float(p[1]), 1))) for name, kind, p in at]


def make_routes(points):
    at = {name: p for name, kind, p in points}
    return [
        ("Camp to stand", "Drawn by eye on the first evening; it meets the brush wall.",
         [at["Camp"], at["Split Boulder"], at["Fallen Spruce"], (1385.0, 1583.0),
          at["Lone Pine"], (1812.0, 1668.0), (2034.0, 1610.0), at["Hunting Stand"]]),
        ("Practice loop", "Six short legs for the children, never far from camp.",
         [at["Camp"], at["Leaning Birch"], at["Old Stump"], at["Mossy Log"],
          at["Flat Rock"], at["Pond Landing"], at["Camp"]]),
        ("Way out to the trail", "If the light or the weather goes: over the dam to the trail.",
         [at["Hunting Stand"], at["Twin Tamaracks"], at["Beaver Dam"], at["Grey Ledge"],
          at["Red Post"]]),
    ]


# name, single steps per 100 m, kind, pace error %, bearing error deg, eye height, speed
WALKERS = [("Ressa (leader)", 122.0, 0, 4.0, 3.0, 1.60, 1.00),
           ("Joff (12)", 148.0, 0, 7.0, 5.0, 1.35, 0.85),
           ("Minka (8)", 174.0, 0, 8.0, 6.0, 1.15, 0.70)]


# ------------------------------------------------------------------- writing

def utm():
    srs = osr.SpatialReference()
    srs.ImportFromEPSG(EPSG)
    srs.SetAxisMappingStrategy(osr.OAMS_TRADITIONAL_GIS_ORDER)
    return srs


def write_dem(path, z):
    ds = gdal.GetDriverByName("GTiff").Create(
        path, N, N, 1, gdal.GDT_Float32,
        ["TILED=YES", "BLOCKXSIZE=256", "BLOCKYSIZE=256", "COMPRESS=DEFLATE", "PREDICTOR=3",
         "ZLEVEL=9"])
    ds.SetGeoTransform((EAST0, CELL, 0, NORTH0 + SIZE, 0, -CELL))
    ds.SetProjection(utm().ExportToWkt())
    band = ds.GetRasterBand(1)
    band.SetNoDataValue(NODATA)
    band.SetDescription("height")
    band.WriteArray(np.round(z, 1).astype(np.float32)[::-1])
    ds.FlushCache()


def line_geometry(line):
    g = ogr.Geometry(ogr.wkbLineString)
    for px, py in line:
        g.AddPoint_2D(round(EAST0 + float(px), 1), round(NORTH0 + float(py), 1))
    return g


def point_geometry(p):
    g = ogr.Geometry(ogr.wkbPoint)
    g.AddPoint_2D(round(EAST0 + p[0], 1), round(NORTH0 + p[1], 1))
    return g


def write_layer(ds, name, gtype, fields, rows):
    """Rows are (geometry or None, value, ...)."""
    layer = ds.CreateLayer(name, utm() if gtype != ogr.wkbNone else None, gtype)
    for field, ftype in fields:
        layer.CreateField(ogr.FieldDefn(field, ftype))
    layer.StartTransaction()
    for row in rows:
        f = ogr.Feature(layer.GetLayerDefn())
        if row[0] is not None:
            f.SetGeometry(row[0])
        for k, v in enumerate(row[1:]):
            f.SetField(k, v)
        layer.CreateFeature(f)
    layer.CommitTransaction()
    print("  %-10s %4d rows" % (name, len(rows)))


def write_vectors(path, polygons, streams, trails, cliffs, points, routes):
    drv = ogr.GetDriverByName("GPKG")
    if os.path.exists(path):
        drv.DeleteDataSource(path)
    ds = drv.CreateDataSource(path)
    text, real, whole = ogr.OFTString, ogr.OFTReal, ogr.OFTInteger
    write_layer(ds, "cover", ogr.wkbPolygon, [("class", text)],
                [(g, name) for name, g in polygons])
    write_layer(ds, "streams", ogr.wkbLineString, [("name", text)],
                [(line_geometry(line), name) for name, line in streams])
    write_layer(ds, "trails", ogr.wkbLineString, [("name", text)],
                [(line_geometry(line), name) for name, line in trails])
    write_layer(ds, "power_line", ogr.wkbLineString, [("name", text), ("kind", text)],
                [(line_geometry(POWER), "East Line", "high-tension line")])
    write_layer(ds, "cliffs", ogr.wkbLineString, [("height_m", real)],
                [(line_geometry(line), round(h, 1)) for line, h in cliffs])
    write_layer(ds, "points", ogr.wkbPoint, [("name", text), ("kind", text)],
                [(point_geometry(p), name, kind) for name, kind, p in points])
    write_layer(ds, "routes", ogr.wkbLineString, [("route", text), ("note", text)],
                [(line_geometry(line), name, note) for name, note, line in routes])
    write_layer(ds, "walkers", ogr.wkbNone,
                [("walker", text), ("paces_100m", real), ("pace_kind", whole),
                 ("pace_err", real), ("brg_err", real), ("eye_m", real), ("speed_f", real)],
                [(None,) + w for w in WALKERS])


def main():
    ap = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    ap.add_argument("--out", default=os.path.dirname(os.path.abspath(__file__)),
                    help="folder to write to")
    args = ap.parse_args()
    gdal.SetConfigOption("OGR_CURRENT_DATE", STAMP)
    gdal.SetConfigOption("GDAL_NUM_THREADS", "1")
    os.makedirs(args.out, exist_ok=True)

    z, water, streams, dam, cliffs, area = make_terrain(np.random.default_rng(SEED))
    trails, fork = make_trails(np.random.default_rng(SEED + 2), z, water)
    cls = make_cover(np.random.default_rng(SEED + 1), z, water, streams, trails, area)
    polygons = cover_polygons(cls)
    points = make_points(streams, trails, dam, fork)
    routes = make_routes(points)

    dem = os.path.join(args.out, "terrain.tif")
    write_dem(dem, z)
    print("terrain.tif  %.1f to %.1f m, %d bytes" % (z.min(), z.max(), os.path.getsize(dem)))
    gpkg = os.path.join(args.out, "sample.gpkg")
    print("sample.gpkg")
    write_vectors(gpkg, polygons, streams, trails, cliffs, points, routes)
    print("  %d bytes" % os.path.getsize(gpkg))


if __name__ == "__main__":
    main()
