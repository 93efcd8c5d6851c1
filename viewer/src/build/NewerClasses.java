import java.io.IOException;
import java.lang.classfile.ClassFile;
import java.lang.classfile.ClassFile.ClassHierarchyResolverOption;
import java.lang.classfile.ClassFile.StackMapsOption;
import java.lang.classfile.ClassFileVersion;
import java.lang.classfile.ClassHierarchyResolver;
import java.lang.classfile.ClassTransform;
import java.lang.classfile.CodeTransform;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Enumeration;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * Writes the classes of a jar in today's class format: {@code java NewerClasses.java JAR}. What was compiled for Java 5
 * is not kept in the start-up cache and is verified the slow way at each start, half as long as a find takes. Nothing
 * else of the jar changes.
 */
public final class NewerClasses {
    private static final int OLD = ClassFile.JAVA_6_VERSION;

    public static void main(String[] line) throws IOException {
        Path jar = Path.of(line[0]);
        Path fresh = jar.resolveSibling(jar.getFileName() + ".new");
        try (JarFile from = new JarFile(jar.toFile());
                URLClassLoader classes = new URLClassLoader(new URL[] {jar.toUri().toURL()});
                ZipOutputStream to = new ZipOutputStream(Files.newOutputStream(fresh))) {
            ClassFile files = ClassFile.of(
                    StackMapsOption.GENERATE_STACK_MAPS,
                    ClassHierarchyResolverOption.of(ClassHierarchyResolver.ofResourceParsing(classes)
                            .orElse(ClassHierarchyResolver.defaultResolver())));
            for (Enumeration<JarEntry> all = from.entries(); all.hasMoreElements(); ) {
                JarEntry entry = all.nextElement();
                byte[] bytes = from.getInputStream(entry).readAllBytes();
                to.putNextEntry(new ZipEntry(entry.getName()));
                to.write(entry.getName().endsWith(".class") ? newer(files, bytes) : bytes);
                to.closeEntry();
            }
        }
        Files.move(fresh, jar, StandardCopyOption.REPLACE_EXISTING);
    }

    private static byte[] newer(ClassFile files, byte[] bytes) {
        var model = files.parse(bytes);
        if (model.majorVersion() >= OLD) {
            return bytes;
        }
        ClassTransform bodies = ClassTransform.transformingMethodBodies(CodeTransform.ACCEPT_ALL);
        ClassTransform version = (to, element) -> {
            if (element instanceof ClassFileVersion) {
                to.withVersion(ClassFile.JAVA_8_VERSION, 0);
            } else {
                to.with(element);
            }
        };
        return files.transformClass(model, version.andThen(bodies));
    }
}
