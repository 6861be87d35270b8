package org.kitweft.sound.wave;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * Rendered samples put aside in a temporary file until it is known how loud they may be: a quarter
 * of an hour of them would not fit into the memory of a small computer. The file goes when this is
 * closed.
 */
final class Samples implements Closeable {
    private static final String FOLDER = System.getProperty("java.io.tmpdir", "");

    private final FileChannel file;
    private ByteBuffer bytes = ByteBuffer.allocate(0).order(ByteOrder.LITTLE_ENDIAN);

    private Samples(FileChannel file) {
        this.file = file;
    }

    /**
     * Nothing yet.
     *
     * @throws IOException if there is no place for temporary files
     */
    static Samples empty() throws IOException {
        Path path = Files.createTempFile("kitweft", ".samples");
        try {
            return new Samples(
                    FileChannel.open(
                            path,
                            StandardOpenOption.READ,
                            StandardOpenOption.WRITE,
                            StandardOpenOption.DELETE_ON_CLOSE));
        } catch (IOException e) {
            Files.deleteIfExists(path);
            throw e;
        }
    }

    private ByteBuffer buffer(int samples) {
        if (bytes.capacity() < samples * Float.BYTES) {
            bytes = ByteBuffer.allocate(samples * Float.BYTES).order(ByteOrder.LITTLE_ENDIAN);
        }
        return bytes.clear().limit(samples * Float.BYTES);
    }

    /** Puts so many samples at the end. */
    void add(float[] samples, int count) throws IOException {
        ByteBuffer buffer = buffer(count);
        buffer.asFloatBuffer().put(samples, 0, count);
        try {
            while (buffer.hasRemaining()) {
                file.write(buffer);
            }
        } catch (IOException e) {
            throw new IOException(
                    "the folder for temporary files, %s: %s".formatted(FOLDER, e.getMessage()), e);
        }
    }

    /** Goes back to the first sample. */
    void rewind() throws IOException {
        file.position(0);
    }

    /** Reads the next samples, as many as were added at least. */
    void read(float[] samples, int count) throws IOException {
        ByteBuffer buffer = buffer(count);
        while (buffer.hasRemaining()) {
            if (file.read(buffer) < 0) {
                throw new IOException("a temporary file has become shorter");
            }
        }
        buffer.flip().asFloatBuffer().get(samples, 0, count);
    }

    @Override
    public void close() throws IOException {
        file.close();
    }
}
