package org.kitweft.file;

import java.io.IOException;
import java.net.URI;
import java.nio.ByteBuffer;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.AccessMode;
import java.nio.file.CopyOption;
import java.nio.file.DirectoryStream;
import java.nio.file.FileStore;
import java.nio.file.FileSystem;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.nio.file.WatchEvent;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.FileAttributeView;
import java.nio.file.attribute.UserPrincipalLookupService;
import java.nio.file.spi.FileSystemProvider;
import java.util.Map;
import java.util.Set;

/**
 * Folders of the real disk on which only so many bytes find room: a stand-in for a full disk, for a
 * real one needs the rights to mount it. Writing beyond them fails with the words that Linux has
 * for it, after what still fits was written.
 */
public final class FullDisk {
    private final FileSystem system = new LimitedSystem();
    private final FileSystemProvider provider = new LimitedProvider();
    private long room;

    private FullDisk(long room) {
        this.room = room;
    }

    /** A folder as it is on a disk with so much room. */
    public static Path with(long bytes, Path folder) {
        return new FullDisk(bytes).wrap(folder);
    }

    private Path wrap(Path real) {
        return new LimitedPath(real);
    }

    private static Path real(Path path) {
        return path instanceof LimitedPath limited ? limited.real : path;
    }

    private final class LimitedChannel implements SeekableByteChannel {
        private final SeekableByteChannel real;

        LimitedChannel(SeekableByteChannel real) {
            this.real = real;
        }

        @Override
        public int write(ByteBuffer bytes) throws IOException {
            if (bytes.remaining() > room) {
                real.write(bytes.slice().limit((int) room));
                room = 0;
                throw new IOException("No space left on device");
            }
            room -= bytes.remaining();
            return real.write(bytes);
        }

        @Override
        public int read(ByteBuffer bytes) throws IOException {
            return real.read(bytes);
        }

        @Override
        public long position() throws IOException {
            return real.position();
        }

        @Override
        public SeekableByteChannel position(long to) throws IOException {
            real.position(to);
            return this;
        }

        @Override
        public long size() throws IOException {
            return real.size();
        }

        @Override
        public SeekableByteChannel truncate(long size) throws IOException {
            real.truncate(size);
            return this;
        }

        @Override
        public boolean isOpen() {
            return real.isOpen();
        }

        @Override
        public void close() throws IOException {
            real.close();
        }
    }

    private final class LimitedProvider extends FileSystemProvider {
        private FileSystemProvider of(Path path) {
            return real(path).getFileSystem().provider();
        }

        @Override
        public String getScheme() {
            return "full";
        }

        @Override
        public FileSystem newFileSystem(URI uri, Map<String, ?> env) {
            throw new UnsupportedOperationException();
        }

        @Override
        public FileSystem getFileSystem(URI uri) {
            throw new UnsupportedOperationException();
        }

        @Override
        public Path getPath(URI uri) {
            throw new UnsupportedOperationException();
        }

        @Override
        public SeekableByteChannel newByteChannel(
                Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes)
                throws IOException {
            return new LimitedChannel(of(path).newByteChannel(real(path), options, attributes));
        }

        @Override
        public DirectoryStream<Path> newDirectoryStream(
                Path path, DirectoryStream.Filter<? super Path> filter) throws IOException {
            return of(path).newDirectoryStream(real(path), filter);
        }

        @Override
        public void createDirectory(Path path, FileAttribute<?>... attributes) throws IOException {
            of(path).createDirectory(real(path), attributes);
        }

        @Override
        public void delete(Path path) throws IOException {
            of(path).delete(real(path));
        }

        @Override
        public void copy(Path from, Path to, CopyOption... options) throws IOException {
            of(from).copy(real(from), real(to), options);
        }

        @Override
        public void move(Path from, Path to, CopyOption... options) throws IOException {
            of(from).move(real(from), real(to), options);
        }

        @Override
        public boolean isSameFile(Path one, Path other) throws IOException {
            return Files.isSameFile(real(one), real(other));
        }

        @Override
        public boolean isHidden(Path path) throws IOException {
            return of(path).isHidden(real(path));
        }

        @Override
        public FileStore getFileStore(Path path) throws IOException {
            return of(path).getFileStore(real(path));
        }

        @Override
        public void checkAccess(Path path, AccessMode... modes) throws IOException {
            of(path).checkAccess(real(path), modes);
        }

        @Override
        public <V extends FileAttributeView> V getFileAttributeView(
                Path path, Class<V> type, LinkOption... options) {
            return of(path).getFileAttributeView(real(path), type, options);
        }

        @Override
        public <A extends BasicFileAttributes> A readAttributes(
                Path path, Class<A> type, LinkOption... options) throws IOException {
            return of(path).readAttributes(real(path), type, options);
        }

        @Override
        public Map<String, Object> readAttributes(
                Path path, String attributes, LinkOption... options) throws IOException {
            return of(path).readAttributes(real(path), attributes, options);
        }

        @Override
        public void setAttribute(Path path, String name, Object value, LinkOption... options)
                throws IOException {
            of(path).setAttribute(real(path), name, value, options);
        }
    }

    private final class LimitedSystem extends FileSystem {
        private final FileSystem real = Path.of("").getFileSystem();

        @Override
        public FileSystemProvider provider() {
            return provider;
        }

        @Override
        public void close() {
            throw new UnsupportedOperationException();
        }

        @Override
        public boolean isOpen() {
            return true;
        }

        @Override
        public boolean isReadOnly() {
            return false;
        }

        @Override
        public String getSeparator() {
            return real.getSeparator();
        }

        @Override
        public Iterable<Path> getRootDirectories() {
            return real.getRootDirectories();
        }

        @Override
        public Iterable<FileStore> getFileStores() {
            return real.getFileStores();
        }

        @Override
        public Set<String> supportedFileAttributeViews() {
            return real.supportedFileAttributeViews();
        }

        @Override
        public Path getPath(String first, String... more) {
            return wrap(real.getPath(first, more));
        }

        @Override
        public PathMatcher getPathMatcher(String pattern) {
            return real.getPathMatcher(pattern);
        }

        @Override
        public UserPrincipalLookupService getUserPrincipalLookupService() {
            return real.getUserPrincipalLookupService();
        }

        @Override
        public WatchService newWatchService() throws IOException {
            return real.newWatchService();
        }
    }

    private final class LimitedPath implements Path {
        private final Path real;

        LimitedPath(Path real) {
            this.real = real;
        }

        @Override
        public FileSystem getFileSystem() {
            return system;
        }

        @Override
        public boolean isAbsolute() {
            return real.isAbsolute();
        }

        @Override
        public Path getRoot() {
            return wrap(real.getRoot());
        }

        @Override
        public Path getFileName() {
            return wrap(real.getFileName());
        }

        @Override
        public Path getParent() {
            return wrap(real.getParent());
        }

        @Override
        public int getNameCount() {
            return real.getNameCount();
        }

        @Override
        public Path getName(int index) {
            return wrap(real.getName(index));
        }

        @Override
        public Path subpath(int from, int to) {
            return wrap(real.subpath(from, to));
        }

        @Override
        public boolean startsWith(Path other) {
            return real.startsWith(real(other));
        }

        @Override
        public boolean endsWith(Path other) {
            return real.endsWith(real(other));
        }

        @Override
        public Path normalize() {
            return wrap(real.normalize());
        }

        @Override
        public Path resolve(Path other) {
            return wrap(real.resolve(real(other)));
        }

        @Override
        public Path relativize(Path other) {
            return wrap(real.relativize(real(other)));
        }

        @Override
        public URI toUri() {
            return real.toUri();
        }

        @Override
        public Path toAbsolutePath() {
            return wrap(real.toAbsolutePath());
        }

        @Override
        public Path toRealPath(LinkOption... options) throws IOException {
            return wrap(real.toRealPath(options));
        }

        @Override
        public WatchKey register(
                WatchService watcher,
                WatchEvent.Kind<?>[] events,
                WatchEvent.Modifier... modifiers) {
            throw new UnsupportedOperationException();
        }

        @Override
        public int compareTo(Path other) {
            return real.compareTo(real(other));
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof LimitedPath limited && real.equals(limited.real);
        }

        @Override
        public int hashCode() {
            return real.hashCode();
        }

        @Override
        public String toString() {
            return real.toString();
        }
    }
}
