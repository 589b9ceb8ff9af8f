"""The two recursions of the criterion as CUDA kernels, one thread block an utterance; same results as recipe.lfmmi.

The plain version starts some twenty small operations a frame, which is what it then waits for. Here a whole utterance is
one block's work, its states in shared memory. Needs CuPy, which compiles the kernels when they are first used.
"""

import numpy as np
import torch

try:
    import cupy
except ImportError:  # machines without a graphics card train with the plain version
    cupy = None

SOURCE = r"""
__device__ double block_sum(double value, double* partial) {
    for (int offset = 16; offset; offset >>= 1) value += __shfl_down_sync(0xffffffffu, value, offset);
    int lane = threadIdx.x & 31, warp = threadIdx.x >> 5;
    __syncthreads();
    if (lane == 0) partial[warp] = value;
    __syncthreads();
    double sum = 0;
    for (int i = 0; i < (blockDim.x >> 5); i++) sum += partial[i];
    return sum;
}

// States are pairs (phone, phone before it); n phones. ahead is [phone][before][next], back is [phone][next][before].
extern "C" __global__ void denominator(
        const double* emit, const int* lengths, const float* ahead, const float* back, const int* entry,
        const int* loop, double* forward, double* factor, double* posterior, double* total,
        int steps, int pdfs, int n) {
    extern __shared__ double shared[];
    const int size = n * n;
    double *state = shared, *other = shared + size, *found = shared + 2 * size;
    __shared__ double partial[32];
    const int length = lengths[blockIdx.x];
    const long row = (long)blockIdx.x * steps;
    double log_total = 0;
    for (int i = threadIdx.x; i < size; i += blockDim.x) state[i] = i == 0 ? 1.0 : 0.0;
    __syncthreads();
    for (int t = 0; t < length; t++) {
        const double* e = emit + (row + t) * pdfs;
        double mine = 0;
        for (int i = threadIdx.x; i < size; i += blockDim.x) {
            const int phone = i / n, next = i - phone * n;
            const float* weight = ahead + (long)phone * size + next;
            double sum = 0;
            for (int before = 0; before < n; before++) sum += state[phone * n + before] * weight[before * n];
            const int target = next * n + phone;
            double value = sum * e[entry[target]];
            if (t > 0) value += state[target] * e[loop[target]];
            other[target] = value;
            mine += value;
        }
        const double scale = fmax(block_sum(mine, partial), 1e-300);
        double* kept = forward + (row + t) * size;
        for (int i = threadIdx.x; i < size; i += blockDim.x) kept[i] = state[i] = other[i] / scale;
        if (threadIdx.x == 0) factor[row + t] = scale;
        log_total += log(scale);
        __syncthreads();
    }
    if (threadIdx.x == 0) total[blockIdx.x] = log_total;
    for (int i = threadIdx.x; i < size; i += blockDim.x) state[i] = 1.0;
    __syncthreads();
    for (int t = length - 1; t >= 0; t--) {
        const double* e = emit + (row + t) * pdfs;
        const double* kept = forward + (row + t) * size;
        const double scale = factor[row + t];
        for (int k = threadIdx.x; k < pdfs; k += blockDim.x) found[k] = 0;
        __syncthreads();
        for (int i = threadIdx.x; i < size; i += blockDim.x) {
            const double both = kept[i] * state[i];
            const double looped = t > 0 ? kept[i - size] * e[loop[i]] * state[i] / scale : 0.0;
            atomicAdd(&found[entry[i]], both - looped);
            if (t > 0) atomicAdd(&found[loop[i]], looped);
            other[i] = e[entry[i]] * state[i];
        }
        __syncthreads();
        for (int k = threadIdx.x; k < pdfs; k += blockDim.x) posterior[(row + t) * pdfs + k] = found[k];
        if (t == 0) break;
        double updated[4];
        int count = 0;
        for (int i = threadIdx.x; i < size; i += blockDim.x) {
            const int phone = i / n, before = i - phone * n;
            const float* weight = back + (long)phone * size + before;
            double sum = 0;
            for (int next = 0; next < n; next++) sum += other[next * n + phone] * weight[next * n];
            updated[count++] = (sum + e[loop[i]] * state[i]) / scale;
        }
        __syncthreads();
        count = 0;
        for (int i = threadIdx.x; i < size; i += blockDim.x) state[i] = updated[count++];
        __syncthreads();
    }
}

// follows[i][j] tells whether state j follows state i; preceded is its transpose.
extern "C" __global__ void numerator(
        const double* emit, const int* lengths, const int* sizes, const int* entry, const int* loop,
        const unsigned char* follows, const unsigned char* preceded, const unsigned char* starts,
        const unsigned char* ends, double* forward, double* factor, double* posterior, double* total, int* possible,
        int steps, int pdfs, int width) {
    extern __shared__ double shared[];
    double *state = shared, *other = shared + width, *found = shared + 2 * width;
    __shared__ double partial[32];
    const int length = lengths[blockIdx.x], size = sizes[blockIdx.x];
    const long row = (long)blockIdx.x * steps, first = (long)blockIdx.x * width;
    const unsigned char* onward = follows + first * width;
    const unsigned char* backward = preceded + first * width;
    double log_total = 0;
    for (int j = threadIdx.x; j < size; j += blockDim.x) state[j] = 0;
    __syncthreads();
    for (int t = 0; t < length; t++) {
        const double* e = emit + (row + t) * pdfs;
        double mine = 0;
        for (int j = threadIdx.x; j < size; j += blockDim.x) {
            double sum = t == 0 ? (double)starts[first + j] : 0.0;
            if (t > 0) for (int i = 0; i < size; i++) if (onward[(long)i * width + j]) sum += state[i];
            double value = sum * e[entry[first + j]];
            if (t > 0) value += state[j] * e[loop[first + j]];
            other[j] = value;
            mine += value;
        }
        double scale = block_sum(mine, partial);
        if (!(scale > 0)) scale = 1;
        double* kept = forward + (row + t) * width;
        for (int j = threadIdx.x; j < size; j += blockDim.x) kept[j] = state[j] = other[j] / scale;
        if (threadIdx.x == 0) factor[row + t] = scale;
        log_total += log(scale);
        __syncthreads();
    }
    double mine = 0;
    for (int j = threadIdx.x; j < size; j += blockDim.x) mine += state[j] * ends[first + j];
    double finished = block_sum(mine, partial);
    if (threadIdx.x == 0) possible[blockIdx.x] = finished > 1e-290;
    finished = fmax(finished, 1e-290);
    if (threadIdx.x == 0) total[blockIdx.x] = log_total + log(finished);
    __syncthreads();
    for (int j = threadIdx.x; j < size; j += blockDim.x) state[j] = ends[first + j] / finished;
    __syncthreads();
    for (int t = length - 1; t >= 0; t--) {
        const double* e = emit + (row + t) * pdfs;
        const double* kept = forward + (row + t) * width;
        const double scale = factor[row + t];
        for (int k = threadIdx.x; k < pdfs; k += blockDim.x) found[k] = 0;
        __syncthreads();
        for (int j = threadIdx.x; j < size; j += blockDim.x) {
            const double both = kept[j] * state[j];
            const double looped = t > 0 ? kept[j - width] * e[loop[first + j]] * state[j] / scale : 0.0;
            atomicAdd(&found[entry[first + j]], both - looped);
            if (t > 0) atomicAdd(&found[loop[first + j]], looped);
            other[j] = e[entry[first + j]] * state[j];
        }
        __syncthreads();
        for (int k = threadIdx.x; k < pdfs; k += blockDim.x) posterior[(row + t) * pdfs + k] = found[k];
        if (t == 0) break;
        for (int i = threadIdx.x; i < size; i += blockDim.x) {
            double sum = 0;
            for (int j = 0; j < size; j++) if (backward[(long)j * width + i]) sum += other[j];
            state[i] = (sum + e[loop[first + i]] * state[i]) / scale;
        }
        __syncthreads();
    }
}
"""


class Kernels:
    """Compiled for the sizes of one denominator."""

    def __init__(self, denominator):
        module = cupy.RawModule(code=SOURCE, options=("-std=c++14",))
        self.denominator, self.numerator = module.get_function("denominator"), module.get_function("numerator")
        self.phones = denominator.ahead.shape[0]
        # In the order in which the threads read: [phone, before, next], then [phone, next, before].
        self.ahead = denominator.back.float().contiguous()
        self.back = denominator.ahead.float().contiguous()
        self.entry, self.loop = denominator.entry.int(), denominator.loop.int()

    @staticmethod
    def launch(kernel, blocks, threads, arguments, shared):
        kernel.max_dynamic_shared_size_bytes = max(shared, 1024)
        values = [a.data_ptr() if isinstance(a, torch.Tensor) else np.int32(a) for a in arguments]
        with cupy.cuda.ExternalStream(torch.cuda.current_stream().cuda_stream):
            kernel((blocks,), (threads,), tuple(values), shared_mem=shared)

    def denominator_posteriors(self, emit, lengths):
        batch, steps, pdfs = emit.shape
        emit, size = emit.contiguous(), self.phones**2
        forward, factor = emit.new_empty(batch, steps, size), emit.new_empty(batch, steps)
        posterior, total = torch.zeros_like(emit), emit.new_empty(batch)
        arguments = [emit, lengths.int(), self.ahead, self.back, self.entry, self.loop]
        arguments += [forward, factor, posterior, total, steps, pdfs, self.phones]
        self.launch(self.denominator, batch, 1024, arguments, 8 * (2 * size + pdfs))
        return total, posterior

    def numerator_posteriors(self, emit, lengths, graph):
        batch, steps, pdfs = emit.shape
        emit, width = emit.contiguous(), graph.entry.shape[1]
        forward, factor = emit.new_empty(batch, steps, width), emit.new_empty(batch, steps)
        posterior, total = torch.zeros_like(emit), emit.new_empty(batch)
        possible = torch.zeros(batch, dtype=torch.int32, device=emit.device)
        follows = graph.follows.to(torch.uint8).contiguous()
        arguments = [emit, lengths.int(), graph.sizes.int(), graph.entry.int(), graph.loop.int(), follows]
        arguments += [follows.transpose(1, 2).contiguous(), graph.starts.to(torch.uint8), graph.ends.to(torch.uint8)]
        arguments += [forward, factor, posterior, total, possible, steps, pdfs, width]
        self.launch(self.numerator, batch, 256, arguments, 8 * (2 * width + pdfs))
        return total, posterior, possible.bool()
