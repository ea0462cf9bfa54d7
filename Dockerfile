# release/pin adds the digests of the base images; docs/releasing.md says when.
FROM mcr.microsoft.com/dotnet/sdk:10.0 AS build
WORKDIR /source
# What decides the packages comes first: a change of source or data leaves this layer as it is.
COPY global.json Directory.Build.props Directory.Build.targets Directory.Packages.props ./
COPY src/ConeService.Data/ConeService.Data.csproj src/ConeService.Data/
COPY src/ConeService.Packaging/ConeService.Packaging.csproj src/ConeService.Packaging/
COPY src/ConeService.Contract/ConeService.Contract.csproj src/ConeService.Contract/
COPY src/ConeService.Firing/ConeService.Firing.csproj src/ConeService.Firing/
COPY src/ConeService.Planning/ConeService.Planning.csproj src/ConeService.Planning/
COPY src/ConeService.Api/ConeService.Api.csproj src/ConeService.Api/
# With native code made ahead, of what a start runs, beside the rest, which is compiled as it runs: a quarter less until the first answer.
RUN dotnet restore src/ConeService.Api --use-current-runtime -p:PublishReadyToRun=true
# The data package is embedded, so the image needs no data beside the assemblies.
COPY .editorconfig BannedSymbols.txt ./
COPY data data
COPY docs docs
COPY releases releases
COPY src src
# The OpenAPI document is committed and checked by the gate; the image serves its own.
# .git is not sent to the builder; the commit comes as an argument.
ARG COMMIT=
RUN dotnet publish src/ConeService.Api -c Release --no-restore --use-current-runtime --no-self-contained -p:PublishReadyToRun=true \
      -o /app -p:OpenApiGenerateDocuments=false -p:UseAppHost=false \
      -p:DebugType=none -p:SourceRevisionId=$COMMIT \
    # What only a compiler reads.
    && rm -f /app/*.xml /app/*.pdb

FROM mcr.microsoft.com/dotnet/aspnet:10.0
WORKDIR /app
COPY --from=build /app .
ARG COMMIT=
LABEL org.opencontainers.image.title="ConeService" \
      org.opencontainers.image.description="Reference service for pottery firing: cones, heat work, loads, colours, schedules" \
      org.opencontainers.image.version="1.0.0" \
      org.opencontainers.image.revision=$COMMIT \
      org.opencontainers.image.licenses="MIT AND CC-BY-4.0"
# A read-only root file system is enough; so are 256 MB: the heap is told to stay small rather than to take what there is.
ENV ASPNETCORE_HTTP_PORTS=8080 \
    DOTNET_EnableDiagnostics=0 \
    DOTNET_GCConserveMemory=5
EXPOSE 8080
USER $APP_UID
# The image has no curl: the host asks itself.
HEALTHCHECK --interval=30s --timeout=5s --start-period=10s CMD ["dotnet", "ConeService.Api.dll", "probe"]
ENTRYPOINT ["dotnet", "ConeService.Api.dll"]
