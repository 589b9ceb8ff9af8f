package readback.assistant.record;

import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;

/** Permissions for the owner alone, where the file system has permissions. */
final class OwnerOnly {

    private OwnerOnly() {}

    /** What a new folder at this place is created with. */
    static FileAttribute<?>[] folder(Path where) {
        return attributes(where, "rwx------");
    }

    /** What a new file at this place is created with. */
    static FileAttribute<?>[] file(Path where) {
        return attributes(where, "rw-------");
    }

    private static FileAttribute<?>[] attributes(Path where, String permissions) {
        return posix(where)
                ? new FileAttribute<?>[] {
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(permissions))
                }
                : new FileAttribute<?>[0];
    }

    private static boolean posix(Path where) {
        return where.getFileSystem().supportedFileAttributeViews().contains("posix");
    }
}
